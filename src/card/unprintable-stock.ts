import type { Stock } from '../stock/shoe.ts';
import type { Finding } from '../units/result.ts';
import type { Measure } from './font/metrics.ts';
import { MISSING_MARK, printable } from './font/printable.ts';

/** More than so many are not all named. Our choice. */
const MOST_NAMED = 20;

/**
 * What of a stock list no drawn card can print: characters in models' names and on shelves that the font lacks. Told
 * when the list is loaded, so that nobody finds a mark in their place on a customer's card. No finding: all print.
 */
export function unprintableInStock(
  { shoes, boxes }: Pick<Stock, 'shoes' | 'boxes'>,
  measure: Measure,
): readonly Finding[] {
  const texts = new Set([...shoes.map(({ name }) => name), ...boxes.map(({ place }) => place)]);
  const missing = [...new Set([...texts].flatMap((text) => printable(text, measure).missing))];
  if (missing.length === 0) return [];
  const characters = missing.slice(0, MOST_NAMED).join(' ');
  return [{ code: 'stock-unprintable', severity: 'note', data: { characters, mark: MISSING_MARK } }];
}
