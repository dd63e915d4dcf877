import { OUTCOMES, type Outcome } from '../flow/knowledge.ts';
import type { Hold } from '../visit/visit.ts';
import type { Fired } from './fire.ts';
import { partOf } from './from.ts';
import { mergeReasons } from './merge-reasons.ts';
import type { Facts, Profile } from './profile.ts';
import { isStop } from './stops.ts';

type Outcomes = Pick<Profile, 'outcome' | 'otherFootwear' | 'outcomeReasons'>;

/**
 * What the visit comes to, first that applies: see somebody first, measure the old shoe first, another kind of
 * footwear, keep today's pair, or a shortlist.
 */
export function outcomeOf(fired: readonly Fired[], hold: Hold, facts: Facts, stops: readonly Fired[]): Outcomes {
  const named = (outcome: Outcome): readonly Fired[] => fired.filter(({ rule }) => rule.outcome === outcome);
  const ownKind = facts['other-footwear'];
  const applies: Readonly<Record<Outcome, boolean>> = {
    refer: isStop(hold),
    'fitter-first': named('fitter-first').length > 0,
    'other-footwear': typeof ownKind === 'string' || named('other-footwear').length > 0,
    'keep-yours': named('keep-yours').length > 0,
    shortlist: true,
  };
  const outcome = OUTCOMES.find((each) => applies[each]) ?? 'shortlist';
  if (outcome === 'shortlist') return { outcome };
  const causes = outcome === 'refer' ? stops : named(outcome);
  const reasons = mergeReasons(causes.map(({ reason }) => reason()));
  if (outcome !== 'other-footwear') return { outcome, outcomeReasons: reasons };
  const kind = typeof ownKind === 'string' ? ownKind : reasons.map(({ from }) => partOf(from)).find(Boolean);
  return { outcome, ...(kind === undefined ? {} : { otherFootwear: kind }), outcomeReasons: reasons };
}
