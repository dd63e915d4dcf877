import { readStock } from '../stock/read-csv.ts';
import type { Stock } from '../stock/shoe.ts';
import type { BoxMark } from '../stock/today.ts';
import { writeStock } from '../stock/write-csv.ts';
import type { Finding, Reading } from '../units/result.ts';
import { isMark, isMoment } from './shop-marks.ts';

/** Stock and today's marks in one file: what a second tablet needs to give the same line-ups. */
export interface StockCopy {
  readonly stock: Stock;
  readonly marks: readonly BoxMark[];
}

const KIND = 'lacewing-stock';
const VERSION = 1;
/** No shop marks more in a day. Our choice. */
const MOST_MARKS = 10_000;

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

/**
 * Reads a one-file copy on a day, `2026-11-25`. Marks that are none or of another day are left out, and counted; the
 * stock is read as any list is. A list from a day to come is refused: whatever is sold would count as known to it.
 */
export function readStockCopy(text: string, day: string, progress?: (share: number) => void): Reading<StockCopy> {
  const refused = (code: string, value = ''): Reading<StockCopy> => ({
    findings: [{ code, severity: 'error', value }],
  });
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
  if (asOf.slice(0, 10) > day) return refused('shop-copy-later', asOf.slice(0, 10));
  const { value, findings } = readStock(list, { asOf, ...(progress && { progress }) });
  const good = marks.slice(0, MOST_MARKS).filter(isMark);
  const today = good.filter(({ at }) => at.startsWith(day));
  const dropped = [
    { code: 'shop-copy-marks', count: marks.length - good.length },
    { code: 'shop-copy-other-day', count: good.length - today.length },
  ].flatMap(({ code, count }): Finding[] => (count > 0 ? [{ code, severity: 'note', data: { marks: count } }] : []));
  return value ? { value: { stock: value, marks: today }, findings: [...findings, ...dropped] } : { findings };
}
