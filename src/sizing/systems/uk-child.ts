import { nearest } from '../../units/round.ts';
import { made, readHalves, type SizeSystem } from './size-system.ts';

/** Child sizes end at 13.5; the next is adult 1 (0 is a last of 4 in; encyclopaedia article "Shoe size"). */
const RANGE = [0, 13.5] as const;

/**
 * UK child sizes: the adult scale plus 13, from 0 (a last of 4 in) to 13.5. Nearest half, ties up.
 *
 * `UK child = 3 × foot / 25.4 − 10`, from the formula on the last (`− 12`) and the allowance of two barleycorns.
 * No answer for a foot past 13.5, which is on the adult scale.
 *
 * @example ukChild.size(200) // 13.5
 * @example ukChild.size(210) // undefined: adult 2
 */
export const ukChild: SizeSystem = {
  parse: readHalves(/^(?:uk )?(?:child|c|k)? ?/i, ...RANGE),
  print: String,
  foot: (size) => ((size + 10) * 25.4) / 3,
  exact: (foot) => (3 * foot) / 25.4 - 10,
  size: (foot) => made(nearest(ukChild.exact(foot), 0.5), ...RANGE),
};
