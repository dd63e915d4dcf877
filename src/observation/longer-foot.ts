import type { Feet, FootMeasure } from './observation.ts';

/** Over this many millimetres apart, the difference is said aloud: up to 19 % of people in a UK survey of 2,890 were. */
export const DIFFERENCE_SAID = 4;

/** The foot that decides the size. */
export interface LongerFoot {
  /** Millimetres. */
  readonly length: number;
  /** `both` when they are equally long, `only-left` or `only-right` when just one was measured. */
  readonly side: 'left' | 'right' | 'both' | 'only-left' | 'only-right';
  /** Millimetres between the two; undefined when only one was measured. */
  readonly difference?: number;
}

/**
 * The longer foot, which decides: the rule of every fitting guide. No answer when neither length was measured.
 *
 * @example longerFoot({ left: { length: 262 }, right: { length: 268 }, posture: 'standing', sock: 'worn-sock' })
 * // { length: 268, side: 'right', difference: 6 }
 */
export function longerFoot(feet: Feet): LongerFoot | undefined {
  const left = feet.left?.length;
  const right = feet.right?.length;
  if (left === undefined && right === undefined) return undefined;
  if (right === undefined) return { length: left as number, side: 'only-left' };
  if (left === undefined) return { length: right, side: 'only-right' };
  const side = left === right ? 'both' : left > right ? 'left' : 'right';
  return { length: Math.max(left, right), side, difference: Math.abs(left - right) };
}

/**
 * The larger of the two feet in one measure, millimetres. No answer when it was measured on neither.
 *
 * @example larger({ left: { width: 99 }, right: { width: 101 }, posture: 'standing', sock: 'worn-sock' }, 'width') // 101
 */
export function larger(feet: Feet, measure: FootMeasure): number | undefined {
  const both = [feet.left?.[measure], feet.right?.[measure]].filter((value) => value !== undefined);
  return both.length === 0 ? undefined : Math.max(...both);
}
