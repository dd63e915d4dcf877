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
  const stops = new Set(known.cautions.filter((row) => isStop(row.level)).map((row) => row.id));
  const fired = new Map<string, Fired>();
  for (const rule of known.rules) {
    const readable = onlySays(rule, stops) ? facts : withoutRoll;
    if (rule.when && !holds(rule.when, readable)) continue;
    fired.set(rule.id, { rule, reason: (per) => reasonOf(rule, traceOf(rule, per, readable, origins)) });
  }
  return [...fired.values()].sort((a, b) => byText(a.rule.id, b.rule.id));
}

type Known = Pick<Knowledge, 'rules' | 'cautions'>;

/** A rule that names cautions and advice and can change neither line-up nor outcome. */
const onlySays = (rule: Rule, stops: ReadonlySet<string>): boolean =>
  !rule.asks && !rule.musts && !rule.outcome && !rule.cautions?.some((id) => stops.has(id));

const reasonOf = ({ id, source, grade }: Rule, from: string | undefined): Reason | undefined =>
  from === undefined ? undefined : { from, rule: id, source, grade };
