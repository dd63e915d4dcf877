import type { Condition } from '../flow/condition.ts';
import { holds } from '../flow/holds.ts';
import type { Facts } from './profile.ts';

/** What a condition may come out as when some facts are not known yet. */
export interface Could {
  readonly hold: boolean;
  readonly fail: boolean;
}

/** Whether a condition could hold and could fail, whatever the open facts turn out to be. */
export function couldHold(condition: Condition, facts: Facts, isOpen: (key: string) => boolean): Could {
  if ('not' in condition) {
    const { hold, fail } = couldHold(condition.not, facts, isOpen);
    return { hold: fail, fail: hold };
  }
  if ('all' in condition) {
    const parts = condition.all.map((part) => couldHold(part, facts, isOpen));
    return { hold: parts.every((part) => part.hold), fail: parts.some((part) => part.fail) };
  }
  if ('any' in condition) {
    const parts = condition.any.map((part) => couldHold(part, facts, isOpen));
    return { hold: parts.some((part) => part.hold), fail: parts.every((part) => part.fail) };
  }
  if (isOpen('answered' in condition ? condition.answered : condition.of)) return { hold: true, fail: true };
  const known = holds(condition, facts);
  return { hold: known, fail: !known };
}
