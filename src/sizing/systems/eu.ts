import { nearest } from '../../units/round.ts';
import { plainText, typedNumber } from '../../units/typed-number.ts';
import { made, type SizeSystem } from './size-system.ts';

/** Smallest and largest EU size read; beyond them a number is something else (common practice). */
export const EU_RANGE = [15, 55] as const;
/** Printed parts of a size, in sixths: whole, third, half, two thirds. */
const PARTS: Readonly<Record<number, string>> = { 0: '', 2: ' 1/3', 3: '.5', 4: ' 2/3' };

/**
 * EU sizes: last length in Paris points (2/3 cm), in halves or in thirds (`42`, `42.5`, `42 2/3`).
 *
 * The foot is taken to be two points shorter than the last: `EU = 0.15 × foot + 2`. Last formula and the allowance of
 * two points: encyclopaedia articles "Paris point" and "Shoe size". The nearest half is given, ties up: 215 mm is
 * 34.25 and becomes 34.5.
 *
 * Where sources disagree (`also-labelled.ts` has these as data for the fitter):
 * - ISO/TS 19407 itself says the EUR scale may mean last length or foot length, depending on the country.
 * - Shops often mark UK 4 as 37 and UK 8 as 42, where ISO 19407 is reported to give 36.5 and 41.5. Converting through
 *   the last instead of the foot (`1.27 × (UK + 25)`) explains it: always 0.54 of a size more.
 * - The allowance: a foot of 250 mm is 39.5 with two points, 39.75 with 15 mm, 40.5 with 20 mm, 40 by the older
 *   Chinese rule (centimetres = (EU + 10) / 2).
 * - A table seen second-hand rounds the ties down (215 to 34, 225 to 35.5).
 *
 * @example eu.size(265) // 42
 * @example eu.print(42 + 2 / 3) // '42 2/3'
 */
export const eu: SizeSystem = {
  parse(text) {
    const number = typedNumber(plainText(text).replace(/^(?:eur?|fr|it) ?/i, ''));
    if (number === undefined) return undefined;
    const sixths = Math.round(number * 6);
    // `42.67` and `42.7` are thirds too, as some tills print them.
    const allowed = sixths % 6 === 2 || sixths % 6 === 4 ? 0.21 : 1e-9;
    if (Math.abs(number * 6 - sixths) > allowed || PARTS[sixths % 6] === undefined) return undefined;
    return made(sixths / 6, ...EU_RANGE);
  },
  print(size) {
    const sixths = Math.round(size * 6);
    return `${Math.floor(sixths / 6)}${PARTS[sixths % 6] ?? ''}`;
  },
  foot: (size) => ((size - 2) * 20) / 3,
  exact: (foot) => (3 * foot) / 20 + 2,
  size: (foot) => made(nearest(eu.exact(foot), 0.5), ...EU_RANGE),
};

/**
 * The nearest EU size on a scale of thirds, as some boxes carry (`42`, `42 1/3`, `42 2/3`), ties up.
 *
 * @example euInThirds(265) // 41 + 2 / 3
 */
export function euInThirds(foot: number): number {
  return Math.round(nearest(eu.exact(foot), 1 / 3) * 6) / 6;
}

/** The last a size is made on by definition, millimetres: EU 42 is 280. */
export function euLast(size: number): number {
  return (size * 20) / 3;
}
