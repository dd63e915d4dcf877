import { nearest } from '../../units/round.ts';
import { made, readHalves, type SizeSystem } from './size-system.ts';
import { usMen } from './us-men.ts';

const RANGE = [1.5, 20] as const;

/** US women's size minus US men's, where the maker has not said: 1, as on measuring gauges and in the reported ISO rows. */
export const US_WOMEN_DEFAULT = 1;
/** The other offset in common use. Which one a model follows is a fact about the model, never inferred. */
export const US_WOMEN_COMMON = 1.5;

/**
 * US women's sizes at a given offset from men's. Nearest half, ties up.
 *
 * Sources give two offsets, 1 ("standard") and 1.5 ("common"): encyclopaedia article "Shoe size". Some unisex labels
 * use 2 (from memory). So the offset is the model's own, and 1 where it is not known.
 *
 * @example usWomen().size(265) // 10.5
 * @example usWomen(1.5).size(265) // 11
 */
export function usWomen(offset: number = US_WOMEN_DEFAULT): SizeSystem {
  const exact = (foot: number) => usMen.exact(foot) + offset;
  return {
    parse: readHalves(/^us ?(?:women|w)? ?/i, ...RANGE),
    print: String,
    foot: (size) => usMen.foot(size - offset),
    exact,
    size: (foot) => made(nearest(exact(foot), 0.5), ...RANGE),
  };
}
