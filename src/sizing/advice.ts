import type { Box } from '../stock/shoe.ts';
import type { Finding } from '../units/result.ts';

/** What size to fetch, and how sure that is. */
export interface SizeAdvice {
  /** What it rests on; `none` means: measure first. */
  readonly from: 'measured' | 'insole' | 'box-label' | 'none';
  /** Deciding (longer) foot, millimetres. */
  readonly footLength?: number;
  /** Half-width of the doubt, millimetres: 2 means ±2 mm. */
  readonly doubt: number;
  /** Space wanted in front of the longest toe, millimetres. */
  readonly toeRoom: readonly [number, number];
  /** Wanted inner length of the shoe, millimetres. */
  readonly innerLength?: readonly [number, number];
  /** Formula sizes, nearest half; absent without a foot length. */
  readonly labels?: FormulaLabels;
  /** Codes under `size.say`: longer foot by 6 mm, measured seated… */
  readonly findings: readonly Finding[];
}

export interface FormulaLabels {
  readonly mondopoint: string;
  readonly eu: string;
  readonly uk: string;
  readonly usMen: string;
  readonly usWomen: string;
}

/** How a box stands to the advice. */
export interface BoxFit {
  readonly box: Box;
  readonly fits: 'yes' | 'maybe' | 'no';
  /** Inner length minus the middle of the wanted range, millimetres; + is longer. */
  readonly off: number;
  /** What it was judged by, most trusted first. */
  readonly by: 'inner-length' | 'mondopoint' | 'label-with-offset' | 'formula';
}
