import regularFont from '@expo-google-fonts/atkinson-hyperlegible-next/400Regular/AtkinsonHyperlegibleNext_400Regular.ttf?url';
import boldFont from '@expo-google-fonts/atkinson-hyperlegible-next/700Bold/AtkinsonHyperlegibleNext_700Bold.ttf?url';
import { expose } from 'comlink';
import type { CardFacts } from '../card/card.ts';
import type { Template } from '../card/template.ts';
import { textOf } from '../card/text/text-of.ts';
import { twinPage } from '../card/twin.ts';
import { drawings as activities } from '../drawings/activities.ts';
import { drawings as floors } from '../drawings/floors.ts';
import { inCurrency } from '../flow/in-currency.ts';
import { cardOfLine, type Line, lineOf } from '../pipeline.ts';
import { firstBundles, otherBundles } from '../screens/parts/word-files.ts';
import type { Stock } from '../stock/shoe.ts';
import { openStore } from '../storage/browser-store.ts';
import type { Words } from '../words/words.ts';
import { wordsOf } from '../words/words-of.ts';
import { benchLine, decidedLine, shoesNamed } from './bench-line.ts';
import { findingsList } from './findings-list.ts';
import { knowledge } from './knowledge.ts';
import type { CardOrder, LineService } from './line-service.ts';
import { type Served, StockKeeper } from './stock-keeper.ts';

/** Feeds the varied importances behind "closest on paper"; one fixed number, so that a second look says the same. */
const SEED = 1;

const keeper = new StockKeeper(openStore(), async (stock) => {
  // Without its fonts a card is not drawn either, and says so itself.
  const parts = await drawingParts().catch(() => undefined);
  return parts?.unprintable(stock) ?? [];
});
const loaded = new Map<string, Promise<Words>>();
const templates = import.meta.glob<Template>('../../print-templates/*/template.json', { import: 'default' });

const pictures = { activities, floors };

const wordsIn = (language: string): Promise<Words> => {
  const known = loaded.get(language);
  if (known) return known;
  const fresh = Promise.all([firstBundles(language), otherBundles(language)]).then(([first, other]) =>
    wordsOf(language, [...first, ...other]),
  );
  loaded.set(language, fresh);
  return fresh;
};

/** The words of a card: sums in the shop's money. */
const wordsFor = async ({ language, shop }: CardOrder): Promise<Words> =>
  inCurrency(await wordsIn(language), knowledge.flow, shop.currency);

const inStock = () => keeper.today();

/** What stands at an address, if a list does. */
async function servedList(address: string): Promise<Served | undefined> {
  const response = await fetch(address);
  if (!response.ok) return undefined;
  const made = response.headers.get('last-modified');
  return { text: await response.text(), made: made ? new Date(made) : new Date() };
}

function lineFor({ visit }: CardOrder): Line {
  return decidedLine(lineOf(visit, knowledge, inStock(), SEED), knowledge, inStock());
}

function factsFor(order: CardOrder, line: Line): CardFacts {
  const { shop, date, ticket, origin, copy, letters = [] } = order;
  return cardOfLine(line, knowledge, inStock(), { shop, date, ticket, origin, copy, letters });
}

const bytesOf = async (url: string): Promise<Uint8Array> => new Uint8Array(await (await fetch(url)).arrayBuffer());

/** What drawing needs and nothing before it does: the PDF writer and two fonts, fetched once. */
let drawing: ReturnType<typeof loadDrawing> | undefined;
async function loadDrawing() {
  const [{ drawCard, measureOf, unprintableInStock }, regular, bold] = await Promise.all([
    import('../card/drawing-parts.ts'),
    bytesOf(regularFont),
    bytesOf(boldFont),
  ]);
  const fonts = { regular, bold };
  return { drawCard, fonts, unprintable: (stock: Stock) => unprintableInStock(stock, measureOf(fonts)) };
}
const drawingParts = () => {
  drawing ??= loadDrawing();
  return drawing;
};

async function templateOf(format: string): Promise<Template> {
  const load =
    templates[`../../print-templates/${format}/template.json`] ?? templates['../../print-templates/a5/template.json'];
  if (!load) throw new Error('There are no print templates');
  return load();
}

const service: LineService = {
  openStock: (served) => keeper.open(() => servedList(served)),
  offerStock: (file, asOf, progress) => keeper.offer(file, asOf, progress),
  swapStock: () => keeper.swap(),
  stockBefore: () => keeper.before(),
  backToStockBefore: () => keeper.back(),
  leaveStock: () => keeper.leave(),
  findingsList: async (language, style) => findingsList(keeper.findings, await wordsIn(language), style),
  stockSummary: () => keeper.summary(),
  findBoxes: (search) => keeper.find(search),
  shoeNames: (ids) => keeper.names(ids),
  stockList: (style) => keeper.list(style),
  stockCopy: () => keeper.copy(),
  useMarks: (marks, date) => keeper.useMarks(marks, date),
  bench: (order) => benchLine(order, knowledge, inStock(), SEED),
  findShoes: (typed, size) => shoesNamed(typed, size, inStock()),
  boxesOf: (shoe) => inStock().boxes.filter((box) => box.shoe === shoe),
  fit: (visit, seed) => lineOf(visit, knowledge, inStock(), seed),
  facts: (order) => {
    const line = lineFor(order);
    return { facts: factsFor(order, line), hold: line.profile.hold };
  },
  twin: async (order, styles) =>
    twinPage(textOf(factsFor(order, lineFor(order)), await wordsFor(order), pictures), styles),
  pdf: async (order) => {
    const [{ drawCard, fonts }, template, words] = await Promise.all([
      drawingParts(),
      templateOf(order.format),
      wordsFor(order),
    ]);
    const { pdf } = await drawCard(factsFor(order, lineFor(order)), words, template, fonts, pictures);
    return pdf;
  },
  warm: async (language) => {
    await Promise.all([drawingParts(), wordsIn(language)]);
  },
};

expose(service);
