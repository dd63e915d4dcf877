import { nearest } from '../../units/round.ts';
import { made, readHalves, type SizeSystem } from './size-system.ts';

const RANGE = [0.5, 17] as const;

/**
 * UK adult sizes: barleycorns (1/3 in), starting 25 of them up the last; halves are made.
 *
 * The foot is taken to be two barleycorns shorter than the last: `UK = 3 × foot / 25.4 − 23`. Formula on the last
 * (`− 25`) and allowance: encyclopaedia article "Shoe size". Nearest half, ties up. Adult 1 follows child 13.5.
 *
 * @example uk.size(265) // 8.5
 * @example uk.print(8.5) // '8.5'
 */
export const uk: SizeSystem = {
  parse: readHalves(/^uk ?/i, ...RANGE),
  print: String,
  foot: (size) => ((size + 23) * 25.4) / 3,
  exact: (foot) => (3 * foot) / 25.4 - 23,
  size: (foot) => made(nearest(uk.exact(foot), 0.5), ...RANGE),
};

/** The last a size is made on by definition, millimetres: UK 8 is 279.4. */
export function ukLast(size: number): number {
  return ((size + 25) * 25.4) / 3;
}
