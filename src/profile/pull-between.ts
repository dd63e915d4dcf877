import { attribute as rowOf } from '../attributes/table.ts';
import { gapBetween } from './gap-between.ts';
import type { Need } from './profile.ts';

/**
 * How far two sets of needs pull apart: over the properties that both ask for, the gap between their ideal ranges as a
 * share of the property's scale, times the lesser of the two importances, added up. 0 where one pair could serve both.
 *
 * @example
 * pullBetween([{ attribute: 'cushion', ideal: [4, 5], importance: 0.5, … }], [{ attribute: 'cushion', ideal: [1, 2], importance: 0.4, … }])
 * // 0.2: a gap of 2 on a scale of 4 is a half, times 0.4
 */
export function pullBetween(a: readonly Need[], b: readonly Need[]): number {
  const others = new Map(b.map((need) => [need.attribute, need]));
  const pulls = a.map((need) => {
    const other = others.get(need.attribute);
    if (!other) return 0;
    const [low, high] = rowOf(need.attribute).range;
    return (gapBetween(need.ideal, other.ideal) / (high - low)) * Math.min(need.importance, other.importance);
  });
  return Number(pulls.reduce((sum, pull) => sum + pull, 0).toFixed(6));
}
