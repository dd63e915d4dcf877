import { nearest } from '../../units/round.ts';
import { made, readHalves, type SizeSystem } from './size-system.ts';
import { ukChild } from './uk-child.ts';

const RANGE = [0, 13.5] as const;

/**
 * US child sizes: UK child plus a third of a size. Nearest half, ties up.
 *
 * The third is from a published formula on the last (`− 11 2/3`); another source puts the two origins 1/12 in
 * (2.1 mm, a quarter of a size) apart, and charts in shops add a half or a whole (from memory).
 *
 * @example usChild.size(150) // 8
 */
export const usChild: SizeSystem = {
  parse: readHalves(/^(?:us )?(?:child|c|k)? ?/i, ...RANGE),
  print: String,
  foot: (size) => ukChild.foot(size - 1 / 3),
  exact: (foot) => ukChild.exact(foot) + 1 / 3,
  size: (foot) => made(nearest(usChild.exact(foot), 0.5), ...RANGE),
};
