import { nearest } from '../../units/round.ts';
import { plainText, typedNumber } from '../../units/typed-number.ts';
import { made } from './size-system.ts';

/** Girth letters of JIS S 5037, slim to wide; E is the average of the people the standard was made from. */
export const GIRTH_LETTERS = ['A', 'B', 'C', 'D', 'E', 'EE', 'EEE', 'EEEE', 'F', 'G'] as const;
export type GirthLetter = (typeof GIRTH_LETTERS)[number];
const E_INDEX = 4;

/** Ball girth of letter E, millimetres, at a base length: men 243 at 250, women 228 at 230 (JIS S 5037 as reprinted). */
const BASE = { men: { length: 250, girth: 243 }, women: { length: 230, girth: 228 } } as const;
/** Girth grows 3 mm with every 5 mm of length, and 6 mm with every letter (JIS S 5037 as reprinted). */
const PER_MILLIMETRE = 0.6;
const PER_LETTER = 6;

/** A Japanese size: foot length in millimetres, and a girth letter where the girth was measured or marked. */
export interface JapaneseSize {
  readonly length: number;
  readonly letter?: GirthLetter;
}

/**
 * The middle ball girth of a length and letter, millimetres.
 *
 * @example japaneseGirth(260, 'EEE', 'men') // 261
 */
export function japaneseGirth(length: number, letter: GirthLetter, sex: 'men' | 'women'): number {
  const { length: base, girth } = BASE[sex];
  return girth + PER_MILLIMETRE * (length - base) + PER_LETTER * (GIRTH_LETTERS.indexOf(letter) - E_INDEX);
}

/**
 * The girth letter of a measured girth; bands run from 3 mm below the middle to just under 3 mm above it.
 *
 * Undefined outside A to G. Only ever from a measured girth: there is no letter in a length. Children have a table of
 * their own that this project has not seen, so they get no letter. One page that gives 9 mm a letter contradicts five
 * others and is taken to be wrong.
 *
 * @example girthLetter(235, 233, 'women') // 'E'
 */
export function girthLetter(length: number, girth: number, sex: 'men' | 'women'): GirthLetter | undefined {
  const above = (girth - japaneseGirth(length, 'E', sex) + PER_LETTER / 2) / PER_LETTER;
  return GIRTH_LETTERS[E_INDEX + Math.floor(above + 1e-9)];
}

/**
 * The Japanese size of a foot: length to the nearest 5 mm, ties up, and the letter if a girth was measured.
 *
 * @example japaneseSize(261, 260, 'men') // { length: 260, letter: 'EEE' }
 */
export function japaneseSize(foot: number, girth?: number, sex?: 'men' | 'women'): JapaneseSize {
  const length = nearest(foot, 5);
  const letter = girth === undefined || sex === undefined ? undefined : girthLetter(length, girth, sex);
  return letter === undefined ? { length } : { length, letter };
}

/**
 * Reads `25.5`, `25.5EE`, `25,5 4E`.
 *
 * @example parseJapanese('25.5 EE') // { length: 255, letter: 'EE' }
 */
export function parseJapanese(text: string): JapaneseSize | undefined {
  const parts = /^([\d.,]+) ?(?:cm)? ?([A-G]|E{2,4}|[2-4]E)?$/i.exec(plainText(text));
  const length = made(Math.round((typedNumber(parts?.[1] ?? '') ?? Number.NaN) * 10), 80, 360);
  if (parts === null || length === undefined || length % 5 !== 0) return undefined;
  const mark = parts[2]?.toUpperCase().replace(/^([2-4])E$/, (_, count: string) => 'E'.repeat(Number(count)));
  const letter = GIRTH_LETTERS.find((each) => each === mark);
  return letter === undefined ? { length } : { length, letter };
}

/**
 * Prints centimetres and letter, as on the box.
 *
 * @example printJapanese({ length: 255, letter: 'EE' }) // '25.5EE'
 */
export function printJapanese(size: JapaneseSize): string {
  return `${size.length / 10}${size.letter ?? ''}`;
}
