import type { Knowledge, Known, Source } from '../flow/knowledge.ts';
import type { Facts, FactValue, Profile, Reason } from './profile.ts';
import { isSlight } from './slight.ts';

/** One line of a profile with the chain behind it: what → from which answer → by which rule → on whose word. */
export interface Why {
  readonly kind: 'outcome' | 'need' | 'must' | 'caution' | 'advice' | 'conflict';
  /** The property, caution, piece of advice or outcome it is about. */
  readonly about: string;
  /** For a need: what is wanted and how much. */
  readonly need?: Pick<Profile['needs'][number], 'ideal' | 'limits' | 'importance' | 'raisedBy'>;
  /** For a must. */
  readonly value?: string | number | boolean;
  readonly links: readonly WhyLink[];
}

export interface WhyLink extends Reason {
  /** The fact under the question it came from, where it is a plain one. */
  readonly said?: FactValue;
  /** How the rule's fact came to us. Absent where no rule stands behind it. */
  readonly known?: Known;
  /** It rests on a load that is there in passing only. */
  readonly slight?: true;
  /** The published source; absent for `common-practice`. */
  readonly citation?: Source;
}

/**
 * Everything in a profile with its chain, in the order of reading: outcome, musts, needs, cautions, advice, conflicts.
 *
 * @example
 * whyOf(profile, knowledge).find((why) => why.about === 'cushion')?.links[0]?.from // 'activity'
 */
export function whyOf(profile: Profile, knowledge: Knowledge): readonly Why[] {
  const links = (reasons: readonly Reason[]) => reasons.map((reason) => linkOf(reason, profile.facts, knowledge));
  return [
    { kind: 'outcome', about: profile.outcome, links: links(profile.outcomeReasons ?? []) },
    ...profile.musts.map(
      (must): Why => ({ kind: 'must', about: must.attribute, value: must.value, links: links(must.reasons) }),
    ),
    ...profile.needs.map(
      ({ attribute, ideal, limits, importance, raisedBy, reasons }): Why => ({
        kind: 'need',
        about: attribute,
        need: { ideal, limits, importance, ...(raisedBy === undefined ? {} : { raisedBy }) },
        links: links(reasons).map((link) =>
          isSlight(link, attribute, profile.facts, knowledge) ? { ...link, slight: true } : link,
        ),
      }),
    ),
    ...profile.cautions.map(
      (caution): Why => ({ kind: 'caution', about: caution.code, links: links(caution.reasons) }),
    ),
    ...profile.advice.map((advice): Why => ({ kind: 'advice', about: advice.code, links: links(advice.reasons) })),
    ...profile.conflicts.map(
      (conflict): Why => ({ kind: 'conflict', about: conflict.attribute, links: links(conflict.between) }),
    ),
  ];
}

function linkOf(reason: Reason, facts: Facts, knowledge: Knowledge): WhyLink {
  const key = reason.from.replace(':', '-');
  const said = Object.hasOwn(facts, key) ? facts[key] : undefined;
  const known = knowledge.rules.find((rule) => rule.id === reason.rule)?.known;
  const citation = knowledge.sources.find((source) => source.id === reason.source);
  return {
    ...reason,
    ...(said === undefined ? {} : { said }),
    ...(known === undefined ? {} : { known }),
    ...(citation === undefined ? {} : { citation }),
  };
}
