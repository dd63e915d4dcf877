/**
 * What is wanted of one figure, in the figure's own unit: full marks over `ideal`, none outside `limits`, and a limb
 * between on either side.
 *
 * The target range of Derringer & Suich (1980, J. Quality Technology 12(4), 214–219), whose one-sided and target
 * forms are the special cases below. `shape` bends a limb: 1 is straight, above 1 is harder to please near the limit.
 */
export interface Wish {
  readonly ideal: readonly [number, number];
  readonly limits: readonly [number, number];
  /** Exponents of the rising and the falling limb; `[1, 1]` when absent. */
  readonly shape?: readonly [number, number];
}

/** More is better: nothing up to `unacceptable`, everything from `enough`. */
export function moreIsBetter(unacceptable: number, enough: number, shape = 1): Wish {
  return { ideal: [enough, Infinity], limits: [unacceptable, Infinity], shape: [shape, 1] };
}

/** Less is better: everything up to `enough`, nothing from `unacceptable`. */
export function lessIsBetter(enough: number, unacceptable: number, shape = 1): Wish {
  return { ideal: [-Infinity, enough], limits: [-Infinity, unacceptable], shape: [1, shape] };
}

/** One figure is best; it need not be the middle of the limits. */
export function targetIsBest(low: number, target: number, high: number, rising = 1, falling = 1): Wish {
  return { ideal: [target, target], limits: [low, high], shape: [rising, falling] };
}

/**
 * How well one figure meets one wish: 0 (not at all) to 1 (as wished). The pure form, without the floor.
 *
 * @example
 * desirability(129.5, moreIsBetter(120, 170)) // 0.19
 */
export function desirability(value: number, wish: Wish): number {
  const [low, high] = wish.ideal;
  const [lowest, highest] = wish.limits;
  const [rising, falling] = wish.shape ?? [1, 1];
  if (value >= low && value <= high) return 1;
  if (value <= lowest || value >= highest) return 0;
  const share = value < low ? (value - lowest) / (low - lowest) : (highest - value) / (highest - high);
  const shape = value < low ? rising : falling;
  return shape === 1 ? share : share ** shape;
}

/**
 * No property but a must may shut a shoe out, so none is ever worth less than this: a pair that misses one wish of
 * twelve equal ones altogether keeps 0.05^(1/12), or 78 %, of its place in the order. Our own choice; the idea of a
 * least value in place of 0 is the `tolerance` of the R package desirability2.
 */
export const FLOOR = 0.05;

/** `desirability`, never below the floor. */
export function floored(value: number, wish: Wish): number {
  return Math.max(FLOOR, desirability(value, wish));
}

/**
 * Overall desirability: the geometric mean, weighted by importance. 0 as soon as one part is 0; 1 when nothing counts.
 *
 * @example
 * overall([0.189, 1, 0.656, 0.932], [1, 1, 1, 1]) // 0.583, as Derringer & Suich print it
 */
export function overall(parts: readonly number[], weights: readonly number[]): number {
  let sum = 0;
  let logs = 0;
  for (let i = 0; i < parts.length; i += 1) {
    const weight = weights[i] as number;
    if (weight === 0) continue;
    sum += weight;
    logs += weight * Math.log(parts[i] as number);
  }
  return sum === 0 ? 1 : Math.exp(logs / sum);
}
