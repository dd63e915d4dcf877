import { dayOf, momentOf } from '../screens/fitter/day.ts';
import { refusedLines } from '../stock/count-lines.ts';
import { LARGEST, readStock } from '../stock/read-csv.ts';
import type { Stock } from '../stock/shoe.ts';
import { type BoxMark, stockToday } from '../stock/today.ts';
import { writeStock } from '../stock/write-csv.ts';
import { looksLikeCopy, readStockCopy, type StockCopy, writeStockCopy } from '../storage/shop-copy.ts';
import type { Store } from '../storage/store.ts';
import type { Finding, Reading } from '../units/result.ts';
import { findBoxes } from './find-boxes.ts';
import {
  type BoxSearch,
  FINDINGS_SHOWN,
  type FoundBoxes,
  type ListStyle,
  type NamedShoe,
  type StockChange,
  type StockOffer,
  type StockSummary,
} from './stock-service.ts';

/** In bytes: UTF-8 has at most three a character here, so a larger file need not be read to be refused. */
const LARGEST_FILE = LARGEST * 3;
/** Spreadsheets take a list for UTF-8 when it begins like this. Common practice. */
const MARK_OF_UTF8 = '\uFEFF';

/** A list served beside the kiosk. */
export interface Served {
  readonly text: string;
  /** When it was made. */
  readonly made: Date;
}

/** The stock of this tablet: read, swapped in one step, searched, and written out again. */
export class StockKeeper {
  readonly #store: Promise<Store>;
  readonly #alsoFind: (stock: Stock) => Promise<readonly Finding[]>;
  #stock: Stock | undefined;
  #offer: (Reading<StockCopy> & { readonly isCopy: boolean }) | undefined;
  #marks: { readonly marks: readonly BoxMark[]; readonly date: string; readonly setOn: string } | undefined;

  /** `alsoFind` looks through a list that can be used for what only the card's font knows. */
  constructor(store: Promise<Store>, alsoFind: (stock: Stock) => Promise<readonly Finding[]> = async () => []) {
    this.#store = store;
    this.#alsoFind = alsoFind;
  }

  /** The stock kept last, else the one served. A kept record that is none is passed over. */
  async open(served: () => Promise<Served | undefined>): Promise<StockSummary | undefined> {
    const kept = await (await this.#store).get<Stock>('stock', 'stock').catch(() => undefined);
    if (isStock(kept)) this.#stock = kept;
    else {
      const list = await served().catch(() => undefined);
      if (list) this.#stock = readStock(list.text, { asOf: momentOf(list.made) }).value;
    }
    return this.summary();
  }

  /** Less what was marked today. Throws where there is no stock. */
  today(): Stock {
    return stockToday(this.#loaded(), this.#marksToday(), this.#marks?.date ?? '');
  }

  useMarks(marks: readonly BoxMark[], date: string): void {
    this.#marks = { marks, date, setOn: dayOf(new Date()) };
  }

  async offer(file: Blob, asOf: string, progress?: (share: number) => void): Promise<StockOffer> {
    const read = await readOffer(file, asOf, progress);
    const also = read.value ? await this.#alsoFind(read.value.stock) : [];
    this.#offer = { ...read, findings: [...read.findings, ...also] };
    const { value, findings, isCopy } = this.#offer;
    const before = new Set(this.#stock?.boxes.map(({ id }) => id));
    const after = new Set(value?.stock.boxes.map(({ id }) => id));
    const sorted = refusalsFirst(findings);
    return {
      usable: value !== undefined,
      isCopy,
      marks: value?.marks.length ?? 0,
      asOf: value?.stock.asOf ?? asOf,
      shoes: value?.stock.shoes.length ?? 0,
      boxes: after.size,
      refused: refusedLines(findings),
      gone: [...before].filter((id) => !after.has(id)).length,
      fresh: [...after].filter((id) => !before.has(id)).length,
      findings: sorted.slice(0, FINDINGS_SHOWN),
      more: Math.max(0, sorted.length - FINDINGS_SHOWN),
    };
  }

  async swap(): Promise<StockChange & { readonly marks: readonly BoxMark[] }> {
    const offered = this.#offer?.value;
    if (!offered) throw new Error('Nothing was offered');
    const change = await this.#use(offered.stock);
    this.#offer = undefined;
    return { ...change, marks: offered.marks };
  }

  /** The stock that the last swap, or the last way back, put aside. */
  async before(): Promise<StockSummary | undefined> {
    const before = await this.#putAside();
    return before && summaryOf(before);
  }

  /** Takes the stock put aside into use again, and puts the present one aside. Throws where there is none. */
  async back(): Promise<StockChange> {
    const before = await this.#putAside();
    if (!before) throw new Error('No stock was put aside');
    return this.#use(before);
  }

  async #putAside(): Promise<Stock | undefined> {
    const kept = await (await this.#store).get<Stock>('stock', 'before').catch(() => undefined);
    return isStock(kept) ? kept : undefined;
  }

  async #use(next: Stock): Promise<StockChange> {
    const store = await this.#store;
    // Kept first: what cannot be kept is not used either, so that a reload never brings another stock.
    await store.put('stock', 'stock', next);
    const before = this.#stock;
    this.#stock = next;
    // Without room for both there is no way back: an older one would be the wrong one.
    const kept = before === undefined || (await store.put('stock', 'before', before).then(done, failed));
    if (!kept) await store.delete('stock', 'before');
    return { stock: summaryOf(next), beforeLost: !kept };
  }

  leave(): void {
    this.#offer = undefined;
  }

  /** Every finding of the file last offered, refusals first. */
  get findings(): readonly Finding[] {
    return refusalsFirst(this.#offer?.findings ?? []);
  }

  summary(): StockSummary | undefined {
    return this.#stock && summaryOf(this.#stock);
  }

  find(search: BoxSearch): FoundBoxes {
    return findBoxes(this.today(), search);
  }

  names(ids: readonly string[]): Readonly<Record<string, NamedShoe>> {
    const wanted = new Set(ids);
    const known = (this.#stock?.shoes ?? []).filter(({ id }) => wanted.has(id));
    return Object.fromEntries(
      known.map(({ id, name, sizeOffset }) => [id, { name, ...(sizeOffset === undefined ? {} : { sizeOffset }) }]),
    );
  }

  /** A pair that was not found today may turn up again; a sold one will not. */
  list(style: ListStyle): Blob {
    const sold = this.#marksToday().filter(({ what }) => what === 'sold');
    const stock = stockToday(this.#loaded(), sold, this.#marks?.date ?? '');
    return new Blob([MARK_OF_UTF8, writeStock(stock, style)], { type: 'text/csv;charset=utf-8' });
  }

  copy(): Blob {
    const copy = writeStockCopy({ stock: this.#loaded(), marks: this.#marksToday() });
    return new Blob([copy], { type: 'application/json' });
  }

  #loaded(): Stock {
    if (!this.#stock) throw new Error('No stock is loaded');
    return this.#stock;
  }

  /** A tablet left on overnight must not carry yesterday's marks into the morning. */
  #marksToday(): readonly BoxMark[] {
    return this.#marks?.setOn === dayOf(new Date()) ? this.#marks.marks : [];
  }
}

async function readOffer(
  file: Blob,
  asOf: string,
  progress?: (share: number) => void,
): Promise<Reading<StockCopy> & { readonly isCopy: boolean }> {
  if (file.size > LARGEST_FILE) {
    const finding: Finding = { code: 'stock-too-large', severity: 'error', data: { most: LARGEST / 1e6 } };
    return { findings: [finding], isCopy: false };
  }
  const text = await file.text();
  if (looksLikeCopy(text)) return { ...readStockCopy(text, dayOf(new Date()), progress), isCopy: true };
  const { value, findings } = readStock(text, { asOf, ...(progress && { progress }) });
  return { ...(value && { value: { stock: value, marks: [] } }), findings, isCopy: false };
}

const done = () => true;
const failed = () => false;

const summaryOf = ({ asOf, shoes, boxes }: Stock): StockSummary => ({
  asOf,
  shoes: shoes.length,
  boxes: boxes.length,
});

/** By line within each, as they came. */
const refusalsFirst = (findings: readonly Finding[]): readonly Finding[] => [
  ...findings.filter(({ severity }) => severity === 'error'),
  ...findings.filter(({ severity }) => severity !== 'error'),
];

function isStock(record: unknown): record is Stock {
  const { shoes, boxes, asOf } = Object(record) as Readonly<Record<string, unknown>>;
  return Array.isArray(shoes) && Array.isArray(boxes) && typeof asOf === 'string';
}
