import type { AttributeKey } from '../attributes/attributes.ts';
import { attribute } from '../attributes/table.ts';
import type { Need } from '../profile/profile.ts';
import type { Shoe } from '../stock/shoe.ts';

/**
 * How far apart two figures count as wholly different: four noticeable steps, or the property's whole range where
 * that is less (support under the arch has two). Over the whole range of weights all shoes of a kind look alike.
 */
function wholeDifference(key: AttributeKey): number {
  const { range, step } = attribute(key);
  return Math.min(range[1] - range[0], 4 * step);
}

/** How far apart two shoes are in one property, 0 to 1; nothing when either figure is missing. */
export function difference(a: Shoe, b: Shoe, key: AttributeKey): number | undefined {
  const one = a.numbers[key];
  const other = b.numbers[key];
  if (one === undefined || other === undefined) return undefined;
  return Math.min(1, Math.abs(one - other) / wholeDifference(key));
}

/**
 * How alike two shoes are where it matters, 0 to 1: the needed properties known of both, weighted by importance
 * (Gower's coefficient of similarity, 1971, Biometrics 27(4), 857–871). With nothing to compare they count as alike.
 */
export function likeness(a: Shoe, b: Shoe, needs: readonly Need[]): number {
  let weights = 0;
  let differences = 0;
  for (const { attribute: key, importance } of needs) {
    const apart = difference(a, b, key);
    if (apart === undefined) continue;
    weights += importance;
    differences += importance * apart;
  }
  return weights === 0 ? 1 : 1 - differences / weights;
}
