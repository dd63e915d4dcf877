import { holds } from '../flow/holds.ts';
import type { Knowledge, Rule } from '../flow/knowledge.ts';
import type { Origins } from './facts.ts';
import type { Facts, Reason } from './profile.ts';
import { factsForRules } from './roll-counts.ts';
import { isStop } from './stops.ts';
import { byText } from './told.ts';
import { traceOf } from './trace.ts';

/** A rule whose condition holds, with what it can be traced to. */
export interface Fired {
  readonly rule: Rule;
  /** Traced for the whole rule, or for one ask scaled by `per`; nothing where no answer stands behind it. */
  readonly reason: (per?: string) => Reason | undefined;
}

/** The rules that hold of some facts, in the order of their ids, each once. */
export function firedRules(known: Known, facts: Facts, origins: Origins): readonly Fired[] {
  const withoutRoll = factsForRules(facts);
  const once = new Map(known.rules.map((rule) => [rule.id, rule]));
  return [...once.values()]
    .map((rule) => ({ rule, readable: onlySays(rule, known.cautions) ? facts : withoutRoll }))
    .filter(({ rule, readable }) => !rule.when || holds(rule.when, readable))
    .sort((a, b) => byText(a.rule.id, b.rule.id))
    .map(({ rule, readable }) => ({ rule, reason: (per) => reasonOf(rule, traceOf(rule, per, readable, origins)) }));
}

type Known = Pick<Knowledge, 'rules' | 'cautions'>;

/** A rule that names cautions and advice and can change neither line-up nor outcome. */
function onlySays(rule: Rule, cautions: Known['cautions']): boolean {
  const stops = cautions.some((row) => isStop(row.level) && rule.cautions?.includes(row.id));
  return !rule.asks && !rule.musts && !rule.outcome && !stops;
}

const reasonOf = ({ id, source, grade }: Rule, from: string | undefined): Reason | undefined =>
  from === undefined ? undefined : { from, rule: id, source, grade };
