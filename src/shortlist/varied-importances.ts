import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/**
 * Sets of importances to try an order with: each set adds up to 1 and is drawn from a Dirichlet distribution.
 *
 * `concentrations` gives one number above 0 per need. All 1 is "any importances whatever, equally likely"; larger
 * numbers in the ratio of the stated importances keep the draws around those. The same seed gives the same sets.
 * Rows follow each other in one array: set k, need j is at `k × needs + j`.
 */
export function variedImportances(concentrations: readonly number[], sets: number, seed: number): Float64Array {
  const chance = xoroshiro128plus(seed);
  // 2^-54 keeps the logarithm finite when the draw is 0.
  const uniform = () => uniformFloat64(chance) + 2 ** -54;
  const needs = concentrations.length;
  const drawn = new Float64Array(sets * needs);
  for (let row = 0; row < drawn.length; row += needs) {
    let sum = 0;
    for (let j = 0; j < needs; j += 1) {
      const value = gamma(concentrations[j] as number, uniform);
      drawn[row + j] = value;
      sum += value;
    }
    for (let j = 0; j < needs; j += 1) drawn[row + j] = (drawn[row + j] as number) / sum;
  }
  return drawn;
}

/** One draw from a gamma distribution of this shape and scale 1: Marsaglia & Tsang 2000 (ACM TOMS 26(3), 363–372). */
function gamma(shape: number, uniform: () => number): number {
  if (shape === 1) return -Math.log(uniform());
  if (shape < 1) return gamma(shape + 1, uniform) * uniform() ** (1 / shape);
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = normal(uniform);
    const v = (1 + c * x) ** 3;
    if (v > 0 && Math.log(uniform()) < 0.5 * x * x + d - d * v + d * Math.log(v)) return d * v;
  }
}

/** One draw from the standard normal distribution (Marsaglia's polar method). */
function normal(uniform: () => number): number {
  for (;;) {
    const a = 2 * uniform() - 1;
    const b = 2 * uniform() - 1;
    const s = a * a + b * b;
    if (s > 0 && s < 1) return a * Math.sqrt((-2 * Math.log(s)) / s);
  }
}
