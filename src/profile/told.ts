import type { FactValue } from './profile.ts';

/** One fact, and the answer or observation it came from (absent for what travels without its answer). */
export interface Told {
  readonly key: string;
  readonly value: FactValue;
  /** As in a reason: a question's id, a question's id and part (`body:heel`), or `observation`. */
  readonly from?: string;
}

/** Facts are rounded to thousandths, so that the order in which shares were added up cannot show. */
export const FACT_DECIMALS = 3;

export const roundTo = (value: number, decimals: number): number => {
  const rounded = Number(value.toFixed(decimals));
  return rounded === 0 ? 0 : rounded;
};
export const roundFact = (value: number): number => roundTo(value, FACT_DECIMALS);

/** By code point, the same on every machine and in every language. */
export const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
