import { readStock } from '../stock/read-csv.ts';
import type { Stock } from '../stock/shoe.ts';
import type { BoxMark } from '../stock/today.ts';
import { writeStock } from '../stock/write-csv.ts';
import type { Finding, Reading } from '../units/result.ts';

/** Stock and today's marks in one file: what a second tablet needs to give the same line-ups. */
export interface StockCopy {
  readonly stock: Stock;
  readonly marks: readonly BoxMark[];
}

const KIND = 'lacewing-stock';
const VERSION = 1;
/** No shop marks more in a day. Our choice. */
const MOST_MARKS = 10_000;
const MOMENT = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2})?$/;

/** The stock stands in it as a list, so that it is read back by the reader that every list goes through. */
export function writeStockCopy({ stock, marks }: StockCopy): string {
  return JSON.stringify({ kind: KIND, version: VERSION, asOf: stock.asOf, marks, list: writeStock(stock) });
}

/** Whether a text means to be a one-file copy and no list: no list begins with a brace. */
export const looksLikeCopy = (text: string): boolean =>
  text
    .replace(/^\uFEFF/, '')
    .trimStart()
    .startsWith('{');

/** Reads a one-file copy. A mark that is none is left out, and counted; the stock is read as any list is. */
export function readStockCopy(text: string, progress?: (share: number) => void): Reading<StockCopy> {
  const refused = (code: string): Reading<StockCopy> => ({ findings: [{ code, severity: 'error' }] });
  let raw: unknown;
  try {
    raw = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return refused('shop-copy-damaged');
  }
  const { kind, version, asOf, marks, list } = Object(raw) as Readonly<Record<string, unknown>>;
  if (kind !== KIND) return refused('shop-copy-foreign');
  if (version !== VERSION) return refused('shop-copy-version');
  if (typeof list !== 'string' || typeof asOf !== 'string' || !isMoment(asOf) || !Array.isArray(marks)) {
    return refused('shop-copy-damaged');
  }
  const { value, findings } = readStock(list, { asOf, ...(progress && { progress }) });
  const good = marks.slice(0, MOST_MARKS).filter(isMark);
  const dropped: Finding[] =
    good.length === marks.length
      ? []
      : [{ code: 'shop-copy-marks', severity: 'note', data: { marks: marks.length - good.length } }];
  return value ? { value: { stock: value, marks: good }, findings: [...findings, ...dropped] } : { findings };
}

/** A day and time that exist: cards print it. */
const isMoment = (text: string): boolean => MOMENT.test(text) && !Number.isNaN(new Date(text).getTime());

function isMark(raw: unknown): raw is BoxMark {
  const { box, what, at } = Object(raw) as Readonly<Record<string, unknown>>;
  return (
    typeof box === 'string' &&
    (what === 'sold' || what === 'not-on-the-shelf') &&
    typeof at === 'string' &&
    isMoment(at)
  );
}
