import type { Flow } from '../flow/format.ts';
import { isFromHealth } from '../profile/from.ts';
import type { Need, Profile, Reason } from '../profile/profile.ts';
import { partsOf } from '../shortlist/parts-of.ts';
import type { LineUp, Shortlist } from '../shortlist/shortlist.ts';
import type { Visit } from '../visit/visit.ts';
import type { Count, Gaps, GapTopic } from './gaps.ts';

/** A need at least this important that no pair meets is something the range lacks. Our choice. */
const IMPORTANT = 0.4;

/**
 * What one closed visit adds to the sums: needs no pair met, musts and sizes that emptied a line-up, the choice, the
 * reason for none. Holds nothing of the person, and no answer.
 *
 * @param minutes from the first question to closing; absent when not known
 */
export function gapsOf(
  visit: Pick<Visit, 'choice'>,
  profile: Profile,
  shortlist: Shortlist,
  flow: Flow,
  minutes?: number,
): Gaps {
  const health = (reasons: readonly Reason[]) =>
    reasons.length > 0 && reasons.every(({ from }) => isFromHealth(from, flow));
  const parts = partsOf(profile);
  const counts = shortlist.lineUps.flatMap((lineUp) => {
    const part = parts.find((each) => each.for === lineUp.for);
    if (part === undefined) return [];
    const mustReasons = (must: string) => part.musts.find(({ attribute }) => attribute === must)?.reasons ?? [];
    return [
      ...part.needs.flatMap((need) => unmet(need, lineUp, health(need.reasons))),
      ...lineUp.ifDropped.map(({ must, value }) =>
        must === 'size' ? one('size', sizeOf(profile)) : one('must', mustOf(must, value), health(mustReasons(must))),
      ),
    ];
  });
  const other = profile.outcome === 'other-footwear' ? profile.otherFootwear : undefined;
  return {
    visits: 1,
    minutes: minutes === undefined ? { sum: 0, visits: 0 } : { sum: Math.round(minutes), visits: 1 },
    counts: [
      ...once([...counts, ...(other === undefined ? [] : [one('other-footwear', other)])]),
      ...chosen(visit, shortlist),
    ],
  };
}

const one = (topic: GapTopic, what: string, health = false): Count => ({ topic, what, health, count: 1 });

/** Two line-ups of one visit lack a thing once. */
function once(counts: readonly Count[]): readonly Count[] {
  return [...new Map(counts.map((count) => [`${count.topic} ${count.what} ${count.health}`, count])).values()];
}

/** The direction wanted, when pairs were to be had and none of them, as far as recorded, lies in the ideal range. */
function unmet({ attribute, ideal, importance }: Need, { entries, more }: LineUp, health: boolean): readonly Count[] {
  if (importance < IMPORTANT) return [];
  const values = [...entries, ...more].flatMap(({ shoe }) => shoe.numbers[attribute] ?? []);
  if (values.length === 0 || values.some((value) => value >= ideal[0] && value <= ideal[1])) return [];
  if (values.every((value) => value > ideal[1])) return [one('need', `${attribute}-less`, health)];
  if (values.every((value) => value < ideal[0])) return [one('need', `${attribute}-more`, health)];
  return [one('need', `${attribute}-between`, health)];
}

function mustOf(must: string, value: string | number | boolean): string {
  return value === true ? must : `${must} ${value}`;
}

/** Shelf and size as asked for: `women eu 38`; `?` where the foot was not measured. */
function sizeOf({ facts, size }: Profile): string {
  return `${facts['shelf'] ?? 'any'} eu ${size.labels?.eu ?? '?'}`;
}

function chosen({ choice }: Pick<Visit, 'choice'>, { lineUps }: Shortlist): readonly Count[] {
  if (choice === undefined) return [];
  if (choice.kind === 'none')
    return [one('first-pair', 'none'), one('no-sale', choice.reason, choice.reason === 'clinician-first')];
  const first = lineUps.some(({ entries }) => entries[0]?.shoe.id === choice.shoe);
  return [one('first-pair', first ? 'chosen' : 'another')];
}
