import type { Need, Preference, Profile } from '../profile/profile.ts';
import type { BoxFit } from '../sizing/advice.ts';
import { easeInFor } from './ease-in.ts';
import { misgivingsFor } from './misgivings.ts';
import { reasonsFor } from './reasons.ts';
import type { Scored } from './scored.ts';
import type { Entry, Part } from './shortlist.ts';

/** What an entry is made with, the same for all of a line-up. */
export interface Setting {
  readonly needs: readonly Need[];
  readonly preferences: readonly Preference[];
  readonly profile: Pick<Profile, 'facts'>;
  /** Ids of the questions about health. */
  readonly health: ReadonlySet<string>;
  /** The unit the customer counts their activity in. */
  readonly unit: string;
}

/** One pair with everything said of it. */
export function entryOf(
  scored: Scored,
  place: number,
  part: Part,
  boxes: readonly BoxFit[],
  { needs, preferences, profile, health, unit }: Setting,
): Entry {
  const { shoe, unknown, desirability } = scored;
  const first = boxes[0]?.box;
  const lastPair = first !== undefined && first.onHand - first.reserved === 1;
  return {
    shoe,
    place,
    part,
    boxes,
    lastPair,
    reasons: reasonsFor(scored, needs, health, preferences),
    misgivings: misgivingsFor(scored, needs, profile, lastPair, health, preferences),
    easeIn: easeInFor(shoe, profile.facts, unit),
    unknown,
    desirability,
  };
}
