import { nearest } from '../../units/round.ts';
import { made, readHalves, type SizeSystem } from './size-system.ts';
import { uk } from './uk.ts';

const RANGE = [1, 18] as const;

/**
 * US men's sizes: UK plus 1 (encyclopaedia article "Shoe size"). Nearest half, ties up.
 *
 * Many labels are nearer UK plus a half (from memory), so a box's own label decides.
 *
 * @example usMen.size(265) // 9.5
 */
export const usMen: SizeSystem = {
  parse: readHalves(/^us ?(?:men|m)? ?/i, ...RANGE),
  print: String,
  foot: (size) => uk.foot(size - 1),
  exact: (foot) => uk.exact(foot) + 1,
  size: (foot) => made(nearest(usMen.exact(foot), 0.5), ...RANGE),
};
