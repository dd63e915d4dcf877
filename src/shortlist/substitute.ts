import { attribute } from '../attributes/table.ts';
import type { Need } from '../profile/profile.ts';
import { floored } from './desirability.ts';

/** Points that a measured scale is looked at in, end to end. More change nothing that shows. */
const POINTS = 41;

/**
 * Desirability that stands in for a figure nobody recorded: the mean over the property's whole scale, as if the figure
 * could be any, which is what the R package `desirability` (Kuhn) does. So a gap costs little where most shoes would
 * do, and much where few would; it never beats a figure that meets the need, nor loses to one that misses it.
 *
 * @example
 * substitute({ attribute: 'cushion', ideal: [4, 5], limits: [2, 7], importance: 0.5, reasons: [] })
 * // 0.52, the mean of 0.05, 0.05, 0.5, 1 and 1 for its five words
 */
export function substitute(need: Need): number {
  const known = found.get(need);
  if (known !== undefined) return known;
  const { kind, range } = attribute(need.attribute);
  const points = kind === 'ordinal' ? range[1] - range[0] + 1 : POINTS;
  let sum = 0;
  for (let i = 0; i < points; i += 1) sum += floored(range[0] + ((range[1] - range[0]) * i) / (points - 1), need);
  found.set(need, sum / points);
  return sum / points;
}

/** The same need stands against every shoe of the stock. */
const found = new WeakMap<Need, number>();
