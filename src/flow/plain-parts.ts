import type { Condition } from './condition.ts';
import type { PlainCondition } from './holds.ts';

/** The plain conditions a condition is made of, in the order they are written. */
export function plainParts(condition: Condition): readonly PlainCondition[] {
  if ('all' in condition) return condition.all.flatMap(plainParts);
  if ('any' in condition) return condition.any.flatMap(plainParts);
  if ('not' in condition) return plainParts(condition.not);
  return [condition];
}

/** The question or fact a plain condition is about. */
export const subjectOf = (plain: PlainCondition): string => ('answered' in plain ? plain.answered : plain.of);
