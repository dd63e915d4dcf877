import type { AttributeKey } from '../attributes/attributes.ts';
import { SUBSTITUTE_DESIRABILITY } from '../attributes/table.ts';
import type { Need } from '../profile/profile.ts';
import type { Shoe } from '../stock/shoe.ts';
import { floored, overall } from './desirability.ts';

/** A shoe with how well it meets each need. */
export interface Scored {
  readonly shoe: Shoe;
  /** One desirability per need, in the needs' order. */
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
 * Scores one shoe. A figure that was not recorded takes the attribute table's substitute desirability and is listed.
 *
 * @example
 * score(shoe, [{ attribute: 'drop', ideal: [4, 8], limits: [0, 12], importance: 1, reasons: [] }]).desirability
 * // 1 for a drop of 6 mm, 0.5 for one of 10 mm, 0.05 for one of 14 mm
 */
export function score(shoe: Shoe, needs: readonly Need[]): Scored {
  const unknown: AttributeKey[] = [];
  const parts = needs.map((need) => {
    const value = shoe.numbers[need.attribute];
    if (value !== undefined) return floored(value, need);
    unknown.push(need.attribute);
    return SUBSTITUTE_DESIRABILITY;
  });
  const whole = overall(
    parts,
    needs.map((need) => need.importance),
  );
  return { shoe, parts, desirability: Math.round(whole * PRECISION) / PRECISION, unknown };
}
