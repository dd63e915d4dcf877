import type { AttributeKey } from '../attributes/attributes.ts';
import type { Ask, Rule } from '../flow/knowledge.ts';
import type { Fired } from './fire.ts';
import { GRADE_CAPS, isLiking, isWeak, LIKING_LEAST } from './grade-caps.ts';
import type { Facts, Reason } from './profile.ts';
import { byText, roundTo } from './told.ts';

/** What one rule asks of one property, with the weight it has after its load and its grade. */
export interface Contribution {
  readonly attribute: AttributeKey;
  readonly topic: string;
  readonly ask: Ask;
  /** 0 to 1, rounded to millionths before anything is compared. */
  readonly weight: number;
  readonly weak: boolean;
  readonly reason: Reason;
}

/**
 * What the fired rules ask, one contribution for each topic and property: the weightiest, then the first by rule id.
 *
 * What no answer stands behind asks for nothing. Liking yields to an event within four weeks.
 */
export function contributionsOf(fired: readonly Fired[], facts: Facts): readonly Contribution[] {
  const lately = facts['lately'];
  const eventSoon = Array.isArray(lately) && lately.includes('event-four-weeks');
  const all = fired
    .filter(({ rule }) => !(eventSoon && isLiking(rule)))
    .flatMap((each) => (each.rule.asks ?? []).flatMap((ask) => contributionOf(each, ask, facts)));
  const strongest = new Map<string, Contribution>();
  for (const each of all) {
    const key = `${each.attribute} ${each.topic}`;
    const best = strongest.get(key);
    if (!best || each.weight > best.weight) strongest.set(key, each);
  }
  return [...strongest.values()].sort(
    (a, b) => byText(a.attribute, b.attribute) || byText(a.reason.rule, b.reason.rule),
  );
}

function contributionOf({ rule, reason }: Fired, ask: Ask, facts: Facts): readonly Contribution[] {
  const weight = effectiveWeight(rule, ask, facts);
  const traced = weight > 0 ? reason(ask.per) : undefined;
  if (!traced || (ask.ideal === undefined && ask.shift === undefined)) return [];
  return [{ attribute: ask.attribute, topic: rule.topic, ask, weight, weak: isWeak(rule), reason: traced }];
}

/** Weight times load times the grade's cap, so that effects grow with the load and no grade outgrows its cap. */
export function effectiveWeight(rule: Rule, ask: Pick<Ask, 'weight' | 'per'>, facts: Facts): number {
  const weight = unit(ask.weight) * (ask.per === undefined ? 1 : scale(facts[ask.per]));
  if (weight <= 0) return 0;
  return roundTo(isLiking(rule) ? Math.max(weight, LIKING_LEAST) : weight * GRADE_CAPS[rule.grade], 6);
}

const scale = (fact: Facts[string] | undefined): number =>
  fact === true ? 1 : typeof fact === 'number' ? unit(fact) : 0;

const unit = (value: number): number => (value > 0 ? Math.min(1, value) : 0);
