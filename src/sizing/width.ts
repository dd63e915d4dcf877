import type { BoxWidth, Shelf } from '../stock/shoe.ts';
import { nearest } from '../units/round.ts';
import { type GirthLetter, girthLetter } from './systems/japanese.ts';

/** How wide a foot is for its length. Words: `size.width.<word>`. */
export interface Width {
  /** Standard deviations from what the survey's feet of this length measure; + is wider. Bench detail. */
  readonly z: number;
  readonly word: BoxWidth;
  /** What it was judged by; a girth says more than a breadth. */
  readonly by: 'girth' | 'breadth';
  /** JIS S 5037 letter, only from a measured girth on the men's or women's shelf. */
  readonly letter?: GirthLetter;
}

interface Line {
  /** `intercept + slope × foot length`, and the standard deviation about it, millimetres. */
  readonly intercept: number;
  readonly slope: number;
  readonly spread: number;
}

/**
 * Regressions on foot length, millimetres, worked out from ANSUR II (Gordon et al. 2014, NATICK/TR-15/007; 4,082 men
 * and 1,986 women of the US Army, 17 to 58 years). Serving soldiers, few over 50, no children: so a bench figure, and
 * the words are kept coarse.
 */
export const FOOT_LINES = {
  men: {
    girth: { intercept: 92.15, slope: 0.5895, spread: 10.38 },
    breadth: { intercept: 38.09, slope: 0.2352, spread: 4.23 },
    heel: { intercept: 17.74, slope: 0.2019, spread: 4.79 },
    ball: { intercept: 0.46, slope: 0.7393, spread: 3.98 },
  },
  women: {
    girth: { intercept: 86.94, slope: 0.5732, spread: 9.37 },
    breadth: { intercept: 40.16, slope: 0.2134, spread: 3.98 },
    heel: { intercept: 14.53, slope: 0.2137, spread: 4.44 },
    ball: { intercept: 2.61, slope: 0.7286, spread: 3.3 },
  },
} as const satisfies Record<'men' | 'women', Record<'girth' | 'breadth' | 'heel' | 'ball', Line>>;

/** Where a word begins, in standard deviations: the narrowest and widest tenth, the widest 3 % (common practice). */
const NARROW_BELOW = -1.28;
const WIDE_FROM = 1.28;
const EXTRA_WIDE_FROM = 1.88;

/**
 * What feet of a length measure on average, millimetres.
 *
 * @example predicted('men', 'girth', 270) // 251.315
 */
export function predicted(
  sex: 'men' | 'women',
  measure: 'girth' | 'breadth' | 'heel' | 'ball',
  length: number,
): number {
  const { intercept, slope } = FOOT_LINES[sex][measure];
  return intercept + slope * length;
}

/**
 * How far a measure lies from that average, in standard deviations.
 *
 * @example zOf('men', 'girth', 270, 270) // 1.80
 */
export function zOf(
  sex: 'men' | 'women',
  measure: 'girth' | 'breadth' | 'heel' | 'ball',
  length: number,
  value: number,
): number {
  return (value - predicted(sex, measure, length)) / FOOT_LINES[sex][measure].spread;
}

/**
 * How wide a foot is for its length, all in millimetres; by girth if measured, else by breadth.
 *
 * On the shelf for anyone the men's and women's figures are averaged. No answer on the junior shelf (the survey has no
 * children), nor when neither was measured.
 *
 * @example widthOf(270, { girth: 270 }, 'men') // z 1.80, word 'wide', letter 'EEEE'
 */
export function widthOf(
  length: number,
  measured: { readonly girth?: number | undefined; readonly breadth?: number | undefined },
  shelf: Shelf,
): Width | undefined {
  const by = measured.girth !== undefined ? 'girth' : 'breadth';
  const value = measured[by];
  if (value === undefined || shelf === 'junior') return undefined;
  const sexes: readonly ('men' | 'women')[] = shelf === 'any' ? ['men', 'women'] : [shelf];
  const z = sexes.reduce((sum, sex) => sum + zOf(sex, by, length, value), 0) / sexes.length;
  const letter = by === 'girth' && shelf !== 'any' ? girthLetter(nearest(length, 5), value, shelf) : undefined;
  return { z, word: widthWord(z), by, ...(letter === undefined ? {} : { letter }) };
}

/**
 * The word for a width: standard for four feet in five.
 *
 * @example widthWord(-1.64) // 'narrow'
 */
export function widthWord(z: number): BoxWidth {
  if (z < NARROW_BELOW) return 'narrow';
  if (z < WIDE_FROM) return 'standard';
  return z < EXTRA_WIDE_FROM ? 'wide' : 'extra-wide';
}
