import type { Grade, Rule } from '../flow/knowledge.ts';

/** The most that a rule of each grade may weigh. Design choices of this project; no source gives such figures. */
export const GRADE_CAPS: Readonly<Record<Grade, number>> = {
  strong: 1,
  moderate: 0.8,
  'common-practice': 0.7,
  weak: 0.35,
  contested: 0.3,
};

/** All weak and contested rules on one property share this one small voice, however many they are. */
export const WEAK_VOICE = 0.35;

/** The customer's own liking weighs at least this: more than all that is weak or contested on a property together. */
export const LIKING_LEAST = 0.5;

export const isLiking = (rule: Rule): boolean => rule.basis === 'liking';

/** Grades that may only reorder within a stated bound. The customer's own liking is no evidence and has none. */
export const isWeak = (rule: Rule): boolean => !isLiking(rule) && (rule.grade === 'weak' || rule.grade === 'contested');
