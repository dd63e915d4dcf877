import { holds } from '../flow/holds.ts';
import type { Rule } from '../flow/knowledge.ts';
import type { Origins } from './facts.ts';
import type { Facts, Reason } from './profile.ts';
import { factsForRules } from './roll-counts.ts';
import { byText } from './told.ts';
import { traceOf } from './trace.ts';

/** A rule whose condition holds, with what it can be traced to. */
export interface Fired {
  readonly rule: Rule;
  /** Traced for the whole rule, or for one ask scaled by `per`; nothing where no answer stands behind it. */
  readonly reason: (per?: string) => Reason | undefined;
}

/** The rules that hold of some facts, in the order of their ids, each once. */
export function firedRules(rules: readonly Rule[], facts: Facts, origins: Origins): readonly Fired[] {
  const readable = factsForRules(facts);
  const once = new Map(rules.map((rule) => [rule.id, rule]));
  return [...once.values()]
    .filter((rule) => !rule.when || holds(rule.when, readable))
    .sort((a, b) => byText(a.id, b.id))
    .map((rule) => ({ rule, reason: (per) => reasonOf(rule, traceOf(rule, per, readable, origins)) }));
}

const reasonOf = ({ id, source, grade }: Rule, from: string | undefined): Reason | undefined =>
  from === undefined ? undefined : { from, rule: id, source, grade };
