import type { AttributeKey } from '../attributes/attributes.ts';
import type { Need, Preference } from '../profile/profile.ts';
import type { Shoe } from '../stock/shoe.ts';
import { floored, overall } from './desirability.ts';
import { preferred } from './preferred.ts';
import { substitute } from './substitute.ts';

/** A shoe with how well it meets each need and each preference. */
export interface Scored {
  readonly shoe: Shoe;
  /** One desirability per need, in the needs' order, then one per preference. */
  readonly parts: readonly number[];
  /** Overall, rounded: see `PRECISION`. */
  readonly desirability: number;
  /** Needed but not recorded, in the needs' order. */
  readonly unknown: readonly AttributeKey[];
}

/**
 * Overall desirabilities are compared in thousandths. Shoes are measured with a thumb and a rule; a finer difference
 * says nothing about feet, and rounding makes the order the same on every machine.
 */
export const PRECISION = 1000;

/**
 * Scores one shoe. A figure that was not recorded takes the need's substitute desirability and is listed.
 *
 * @example
 * score(shoe, [{ attribute: 'drop', ideal: [4, 8], limits: [0, 12], importance: 1, reasons: [] }]).desirability
 * // 1 for a drop of 6 mm, 0.5 for one of 10 mm, 0.05 for one of 14 mm
 */
export function score(shoe: Shoe, needs: readonly Need[], preferences: readonly Preference[] = []): Scored {
  const unknown: AttributeKey[] = [];
  const parts: number[] = [];
  const weights: number[] = [];
  for (const need of needs) {
    const value = shoe.numbers[need.attribute];
    if (value === undefined) unknown.push(need.attribute);
    parts.push(value === undefined ? substitute(need) : floored(value, need));
    weights.push(need.importance);
  }
  for (const preference of preferences) {
    parts.push(preferred(shoe, preference));
    weights.push(preference.importance);
  }
  const whole = overall(parts, weights);
  return { shoe, parts, desirability: Math.round(whole * PRECISION) / PRECISION, unknown };
}
