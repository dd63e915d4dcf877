import type { MustRow, Rule, WishRow } from '../flow/knowledge.ts';
import type { ActivityPart } from './activity-parts.ts';
import { effectiveWeight } from './contributions.ts';
import type { Fired } from './fire.ts';
import { mergeReasons } from './merge-reasons.ts';
import { MATTERS_MOST } from './needs.ts';
import type { Facts, Preference, Reason } from './profile.ts';
import { byText, roundTo } from './told.ts';

/**
 * How much it matters that a shoe is made for what is done in it: as much as the most that a need can matter by
 * itself. Common practice: a fitter goes to that wall first, and leaves it for a reason. Our figure.
 */
export const MADE_FOR_IMPORTANCE = roundTo(1 / MATTERS_MOST, 3);

/** What is preferred beside the properties with a size: the uses that go with the activities, and the rules' wishes. */
export function preferencesOf(
  fired: readonly Fired[],
  facts: Facts,
  activities: readonly ActivityPart[],
): readonly Preference[] {
  return [...madeFor(activities), ...wished(fired, facts)];
}

/**
 * An activity for which nothing in particular is sold, and "something else", have no say: there the loads alone
 * decide, and the preference matters by the share of the others.
 */
function madeFor(activities: readonly ActivityPart[]): readonly Preference[] {
  const known = activities.flatMap(({ row, share, question }) =>
    row?.uses && row.uses.length > 0 ? [{ uses: row.uses, share, question }] : [],
  );
  const whole = known.reduce((sum, { share }) => sum + share, 0);
  if (whole === 0) return [];
  const reasons = known
    .toSorted((a, b) => b.share - a.share)
    .map(({ question }): Reason => ({ from: question, rule: MADE_FOR, source: COMMON, grade: COMMON }));
  return [
    {
      kind: 'use',
      code: MADE_FOR,
      importance: roundTo(MADE_FOR_IMPORTANCE * whole, 3),
      parts: known.map(({ uses, share }) => ({ uses, share: roundTo(share / whole, 3) })),
      reasons: mergeReasons(reasons),
    },
  ];
}
export const MADE_FOR = 'made-for';
const COMMON = 'common-practice';

interface Wished {
  readonly wish: WishRow;
  readonly weight: number;
  readonly reason: Reason;
}

/** One wish for each id, the weightiest; what no answer stands behind is not wished. */
function wished(fired: readonly Fired[], facts: Facts): readonly Preference[] {
  const all = fired.flatMap((each) => (each.rule.wishes ?? []).flatMap((wish) => wishOf(each, wish, facts)));
  const ids = [...new Set(all.map(({ wish }) => wish.id))].sort(byText);
  return ids.map((id) => {
    const own = all
      .filter(({ wish }) => wish.id === id)
      .sort((a, b) => b.weight - a.weight || byText(a.reason.rule, b.reason.rule));
    const { wish, weight } = own[0] as Wished;
    return {
      kind: 'wish',
      code: `wish-${id}`,
      importance: roundTo(weight / MATTERS_MOST, 3),
      anyOf: wish.anyOf satisfies readonly MustRow[],
      ...(wish.safety ? { safety: wish.safety } : {}),
      reasons: mergeReasons(own.map(({ reason }) => reason)),
    };
  });
}

function wishOf({ rule, reason }: Fired, wish: WishRow, facts: Facts): readonly Wished[] {
  const weight = effectiveWeight(rule satisfies Rule, wish, facts);
  const traced = weight > 0 ? reason(wish.per) : undefined;
  return traced ? [{ wish, weight, reason: traced }] : [];
}
