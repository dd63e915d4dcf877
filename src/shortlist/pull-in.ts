import type { Knowledge } from '../flow/knowledge.ts';
import type { Profile } from '../profile/profile.ts';
import type { Shoe, Stock } from '../stock/shoe.ts';
import { boxesInSize } from './boxes-in-size.ts';
import { entryOf } from './entry.ts';
import { meets } from './musts.ts';
import { partsOf, settingOf } from './parts-of.ts';
import { score } from './scored.ts';
import type { Entry } from './shortlist.ts';

/** A model the fitter pulled in by hand, with its own reasons and misgivings, and the musts it does not meet. */
export interface PulledIn {
  readonly entry: Entry;
  /** Attributes of the musts it fails; `size` when no box in the size is on hand. */
  readonly fails: readonly string[];
}

/**
 * Judges any model as the line-up's own are judged, whatever the musts say of it: the fitter may pull it in, and is
 * told what it fails. `place` is where it is to stand.
 */
export function pullIn(
  shoe: Shoe,
  place: number,
  profile: Profile,
  knowledge: Knowledge,
  stock: Stock,
  forPart = 'all',
): PulledIn {
  const part = partsOf(profile).find((each) => each.for === forPart);
  if (part === undefined) throw new Error(`The profile has no part ${forPart}`);
  const boxes = boxesInSize({ ...stock, shoes: [shoe] }, profile.size).get(shoe.id) ?? [];
  const fails = part.musts.filter((must) => meets(shoe, must) !== 'yes').map(({ attribute }) => attribute);
  return {
    entry: entryOf(
      score(shoe, part.needs, part.preferences),
      place,
      'pulled-in',
      boxes,
      settingOf(part, profile, knowledge),
    ),
    fails: boxes.length > 0 ? fails : [...fails, 'size'],
  };
}
