import { proxy, wrap } from 'comlink';
import type { CardOrder, LineService } from './line-service.ts';
import { twinStyles } from './twin-styles.ts';

/** The worker's service as screens call it: every answer comes later, and a reading copy finds its own style. */
export type LineClient = {
  readonly [Name in Exclude<keyof LineService, 'twin'>]: (
    ...args: Parameters<LineService[Name]>
  ) => Promise<Awaited<ReturnType<LineService[Name]>>>;
} & { readonly twin: (order: CardOrder) => Promise<string> };

let client: LineClient | undefined;

/**
 * The one worker of this page, started when first asked for. Comlink carries the calls; it is kept for just this.
 *
 * Comlink's own object answers to every name there is, so that a template takes it for one of its directives: screens
 * get a plain one with the service's names and no others.
 */
export function lineClient(): LineClient {
  client ??= plain(new Worker(new URL('./line-worker.ts', import.meta.url), { type: 'module' }));
  return client;
}

function plain(worker: Worker): LineClient {
  const remote = wrap<LineService>(worker);
  return {
    openStock: (served) => remote.openStock(served),
    offerStock: (file, asOf, progress) => remote.offerStock(file, asOf, progress && proxy(progress)),
    swapStock: () => remote.swapStock(),
    stockBefore: () => remote.stockBefore(),
    backToStockBefore: () => remote.backToStockBefore(),
    leaveStock: () => remote.leaveStock(),
    findingsList: (language, style) => remote.findingsList(language, style),
    stockSummary: () => remote.stockSummary(),
    findBoxes: (search) => remote.findBoxes(search),
    shoeNames: (ids) => remote.shoeNames(ids),
    stockList: (style) => remote.stockList(style),
    stockCopy: () => remote.stockCopy(),
    fit: (visit, seed) => remote.fit(visit, seed),
    facts: (order) => remote.facts(order),
    twin: (order) => remote.twin(order, twinStyles(order.format)),
    pdf: (order) => remote.pdf(order),
    warm: (language) => remote.warm(language),
    useMarks: (marks, date) => remote.useMarks(marks, date),
    bench: (order) => remote.bench(order),
    findShoes: (text, size) => remote.findShoes(text, size),
    boxesOf: (shoe) => remote.boxesOf(shoe),
  };
}
