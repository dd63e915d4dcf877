import type { LabelSystem } from '../stock/shoe.ts';
import { nearest } from '../units/round.ts';
import { eu } from './systems/eu.ts';
import { uk } from './systems/uk.ts';
import { US_WOMEN_COMMON, usWomen } from './systems/us-women.ts';

/** Another size that boxes for the same foot carry, and why. Words: `size.also.<why>`. For the fitter only. */
export interface AlsoLabelled {
  readonly system: LabelSystem;
  readonly label: string;
  readonly why: 'through-the-last' | 'more-allowance' | 'older-rule' | 'women-and-a-half';
}

/**
 * EU by way of the last instead of the foot: UK last (25 barleycorns and the size) in Paris points.
 * Explains why shops mark UK 4 as 37 and UK 8 as 42 where ISO 19407 is reported to give 36.5 and 41.5.
 *
 * @example euThroughLast(262.4666666666667) // 41.91
 */
export function euThroughLast(foot: number): number {
  return 1.27 * (uk.exact(foot) + 25);
}

/**
 * EU with a stated allowance between foot and last, in place of two points.
 * Published: 15 mm (a Portuguese trade page), 20 mm (a Swiss broadcaster's explanation).
 *
 * @example euWithAllowance(250, 20) // 40.5
 */
export function euWithAllowance(foot: number, allowance: number): number {
  return 0.15 * (foot + allowance);
}

/**
 * EU by the rule of the older Chinese standard, centimetres = (EU + 10) / 2.
 *
 * @example euByOlderRule(250) // 40
 */
export function euByOlderRule(foot: number): number {
  return foot / 5 - 10;
}

/** Farthest from the formula that is worth saying, EU sizes. */
const FARTHEST = 1.5;

/**
 * What else boxes for this foot may say, each label once, without the formula's own. "Some makers label this EU 42."
 *
 * Only what was read in a source is here; disagreements known from memory stand in the systems' own comments.
 *
 * @example alsoLabelled(262.5) // EU 42 (through the last), EU 42.5 (more allowance), US women 10.5
 */
export function alsoLabelled(foot: number): readonly AlsoLabelled[] {
  const own = eu.size(foot);
  const candidates: readonly (readonly [number, AlsoLabelled['why']])[] = [
    [euThroughLast(foot), 'through-the-last'],
    [euWithAllowance(foot, 15), 'more-allowance'],
    [euWithAllowance(foot, 20), 'more-allowance'],
    [euByOlderRule(foot), 'older-rule'],
  ];
  const seen = new Set([own]);
  // The rules were made for adults; for small feet the older one strays sizes away, which helps nobody.
  const far = (size: number) => Math.abs(size - eu.exact(foot)) > FARTHEST;
  const others: AlsoLabelled[] = [];
  for (const [exact, why] of candidates) {
    const size = nearest(exact, 0.5);
    if (seen.has(size) || far(size)) continue;
    seen.add(size);
    others.push({ system: 'eu', label: eu.print(size), why });
  }
  const women = usWomen(US_WOMEN_COMMON);
  const womenSize = women.size(foot);
  if (womenSize !== undefined) {
    others.push({ system: 'us-women', label: women.print(womenSize), why: 'women-and-a-half' });
  }
  return others;
}
