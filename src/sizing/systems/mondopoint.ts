import { nearest } from '../../units/round.ts';
import { plainText, typedNumber } from '../../units/typed-number.ts';
import { made, type SizeSystem } from './size-system.ts';

/** Lengths read as Mondopoint, millimetres; beyond them a number is something else (common practice). */
export const MONDOPOINT_RANGE = [80, 360] as const;
const WIDTHS = [30, 160] as const;
/** Length steps of ISO 9407's two ranges, millimetres; 7.5 is for special footwear. */
export const MONDOPOINT_STEPS = [5, 7.5] as const;

/** A Mondopoint mark: foot length, and foot width where marked, both in millimetres. */
export interface Mondopoint {
  readonly length: number;
  readonly width?: number;
}

/**
 * Reads a Mondopoint mark: `270`, `270/103`, `215-82`.
 *
 * @example parseMondopoint('270/103') // { length: 270, width: 103 }
 */
export function parseMondopoint(text: string): Mondopoint | undefined {
  const [first = '', second, ...more] = plainText(text)
    .replace(/ ?mm$/i, '')
    .split(/ ?[/-] ?/);
  const length = made(typedNumber(first) ?? Number.NaN, ...MONDOPOINT_RANGE);
  if (length === undefined || more.length > 0) return undefined;
  if (second === undefined) return { length };
  const width = made(typedNumber(second) ?? Number.NaN, ...WIDTHS);
  return width === undefined || width >= length ? undefined : { length, width };
}

/**
 * Prints a mark with the separator in use, a stroke.
 *
 * @example printMondopoint({ length: 270, width: 103 }) // '270/103'
 */
export function printMondopoint(mark: Mondopoint): string {
  return mark.width === undefined ? String(mark.length) : `${mark.length}/${mark.width}`;
}

/**
 * Mondopoint (ISO 9407): the foot itself, heel to longest toe, in millimetres; nearest 5, ties up.
 *
 * ISO 9407:1991, as adopted in GB/T 3293.1-1998, measures standing, weight on both feet, in hose that suits the shoe;
 * an encyclopaedia says barefoot instead. So posture and sock are noted with the measurement.
 *
 * @example mondopoint.size(262.4) // 260
 */
export const mondopoint: SizeSystem = {
  parse: (text) => parseMondopoint(text)?.length,
  print: String,
  foot: (size) => size,
  exact: (foot) => foot,
  size: (foot) => made(nearest(foot, 5), ...MONDOPOINT_RANGE),
};
