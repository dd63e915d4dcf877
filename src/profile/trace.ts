import type { Condition } from '../flow/condition.ts';
import { holds } from '../flow/holds.ts';
import type { Basis, Rule } from '../flow/knowledge.ts';
import type { Origins } from './facts.ts';
import { questionOf } from './from.ts';
import type { Facts } from './profile.ts';

/** Which questions a reason is best traced to when a rule reads several, by the rule's basis. */
const PREFERRED: Readonly<Record<Basis, readonly string[]>> = {
  activity: ['activity', 'else-loads', 'second-activity', 'hours', 'lately'],
  floor: ['floors', 'wet'],
  place: ['place-rules', 'worn-to-and-from'],
  liking: ['liking', 'matters-most', 'budget', 'closure', 'never'],
  body: ['body', 'ankles'],
  person: ['conditions', 'inside', 'age-band', 'closure'],
  today: ['now-troubles', 'past-pairs', 'now-feel', 'now-kind', 'observation'],
  observation: ['observation'],
  signs: ['signs', 'conditions'],
};

/**
 * The answer or observation that a rule's effect is traced to, or nothing if none stands behind it.
 *
 * A rule without a condition is about everybody who is to be fitted: it is traced to the activity.
 */
export function traceOf(rule: Rule, per: string | undefined, facts: Facts, origins: Origins): string | undefined {
  const said = rule.when ? support(rule.when, true, facts, origins) : [];
  const scaled = per === undefined ? undefined : origins.get(per);
  const found = [
    ...said.filter((each) => each.plain).map((each) => each.from),
    ...(scaled === undefined ? [] : [scaled]),
    ...said.filter((each) => !each.plain).map((each) => each.from),
  ];
  if (!rule.when && found.length === 0) {
    const general = origins.get('activity');
    if (general !== undefined) found.push(general);
  }
  if (found.length < 2) return found[0];
  const preferred = PREFERRED[rule.basis];
  return preferred.map((question) => found.find((from) => questionOf(from) === question)).find(Boolean) ?? found[0];
}

interface Support {
  readonly from: string;
  /** Said as such, not by the absence of something else. */
  readonly plain: boolean;
}

/** The answers that make a condition true (`wanted`) or false. */
function support(condition: Condition, wanted: boolean, facts: Facts, origins: Origins): readonly Support[] {
  const each = (parts: readonly Condition[]) =>
    parts.filter((part) => holds(part, facts) === wanted).map((part) => support(part, wanted, facts, origins));
  if ('not' in condition) return support(condition.not, !wanted, facts, origins);
  if ('all' in condition) return wanted ? each(condition.all).flat() : firstFound(each(condition.all));
  if ('any' in condition) return wanted ? firstFound(each(condition.any)) : each(condition.any).flat();
  const key = 'answered' in condition ? condition.answered : condition.of;
  const from = Object.hasOwn(facts, key) ? origins.get(key) : undefined;
  if (from === undefined) return [];
  const part = wanted && 'includes' in condition && from === key ? `${from}:${condition.includes}` : from;
  return [{ from: part, plain: wanted }];
}

const firstFound = (found: readonly (readonly Support[])[]): readonly Support[] =>
  found.find((each) => each.length > 0) ?? [];
