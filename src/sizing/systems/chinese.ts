import { nearest } from '../../units/round.ts';
import { plainText, typedNumber } from '../../units/typed-number.ts';
import { made } from './size-system.ts';

/**
 * A Chinese size: foot length in millimetres, and a girth type from 1 (slim) to 5 (wide) in halves, where marked.
 * Types stand 7 mm of girth apart (GB 3293-1982, as reported in an encyclopaedia).
 */
export interface ChineseSize {
  readonly length: number;
  readonly type?: number;
}

/**
 * The Chinese size of a foot: the same 5 mm lengths as Mondopoint (GB/T 3293.1-1998 is ISO 9407:1991), ties up.
 *
 * No girth type is worked out: the standard's base girth is not in a source this project has seen.
 *
 * @example chineseSize(252) // { length: 250 }
 */
export function chineseSize(foot: number): ChineseSize {
  return { length: nearest(foot, 5) };
}

/**
 * Reads `25`, `25.5`, `25(3)`, `25 1/2 (2.5)`, and the millimetres of newer boxes, `250`.
 *
 * @example parseChinese('25(3)') // { length: 250, type: 3 }
 */
export function parseChinese(text: string): ChineseSize | undefined {
  const parts = /^([\d.,/ ]+?) ?(?:\(([\d.,]+)\))?$/.exec(plainText(text));
  const number = typedNumber(parts?.[1] ?? '') ?? Number.NaN;
  const length = made(Math.round(number >= 80 ? number : number * 10), 80, 360);
  if (parts === null || length === undefined || length % 5 !== 0) return undefined;
  if (parts[2] === undefined) return { length };
  const type = made(typedNumber(parts[2]) ?? Number.NaN, 1, 5);
  return type === undefined || !Number.isInteger(type * 2) ? undefined : { length, type };
}

/**
 * Prints centimetres, with the type in brackets.
 *
 * @example printChinese({ length: 250, type: 3 }) // '25(3)'
 */
export function printChinese(size: ChineseSize): string {
  return size.type === undefined ? String(size.length / 10) : `${size.length / 10}(${size.type})`;
}
