import type { Need, Preference, Profile } from '../profile/profile.ts';
import { runsOf } from '../sizing/box-fit.ts';
import { mostImportant, tracedTo } from './meets.ts';
import { isMadeFor, soldAs, wishMet } from './preferred.ts';
import type { Scored } from './scored.ts';
import type { Meets } from './shortlist.ts';

/** A figure that lies outside the ideal range is a misgiving once it costs this much of its desirability. Our choice. */
const WORTH_SAYING = 0.9;

/** A missing figure is a misgiving when its need is at least this important. Our choice. */
const IMPORTANT = 0.4;

/**
 * From here a sole counts as tall (mm at the heel) and as soft (the word "soft"): together a misgiving for people of
 * 65 and over and after falls. A review of footwear and balance in older people favours low, firm soles (Menant et al.
 * 2008, J Rehabil Res Dev 45, 1167–1181); it names no figure, so these are ours.
 */
const TALL = 32;
const SOFT = 4;

/** What speaks against a pair: first what bears on safety, then needs it misses or may miss, then what the stock says. */
export function misgivingsFor(
  scored: Scored,
  needs: readonly Need[],
  profile: Pick<Profile, 'facts'>,
  lastPair: boolean,
  health: ReadonlySet<string>,
  preferences: readonly Preference[] = [],
): readonly Meets[] {
  return mostImportant([
    ...tallAndSoft(scored, profile, health),
    ...preferences.flatMap((each, i) => lacking(scored, each, scored.parts[needs.length + i] as number, health)),
    ...needs.flatMap((need, j) => missed(scored, need, scored.parts[j] as number, health)),
    ...ofTheStock(scored, lastPair),
  ]);
}

/** Above any need: what bears on staying upright is said first. */
const SAFETY = 2;

type Weighed = { readonly weight: number; readonly meets: Meets };

function tallAndSoft(
  { shoe: { numbers } }: Scored,
  { facts }: Pick<Profile, 'facts'>,
  health: ReadonlySet<string>,
): readonly Weighed[] {
  if ((numbers['heel-stack'] ?? 0) < TALL || (numbers.cushion ?? 0) < SOFT) return [];
  const conditions = facts['conditions'];
  const falls = Array.isArray(conditions) && conditions.includes('falls-or-unsteady');
  const from = facts['person-older'] === true ? 'age-band' : falls ? 'conditions' : undefined;
  if (from === undefined) return [];
  return [{ weight: SAFETY, meets: { code: 'tall-and-soft', from, ...(health.has(from) && { health: true }) } }];
}

/** Made for something else, or without what was wished. A mark nobody recorded is no misgiving: few shops note them all. */
function lacking(
  { shoe }: Scored,
  preference: Preference,
  part: number,
  health: ReadonlySet<string>,
): readonly Weighed[] {
  const { code, importance, reasons } = preference;
  const weight = importance * (1 - part);
  const traced = tracedTo(reasons, health);
  if (preference.kind === 'use')
    return isMadeFor(shoe, [preference]) ? [] : [{ weight, meets: { code: `${code}-${soldAs(shoe)}`, ...traced } }];
  if (wishMet(shoe, preference) !== 'no') return [];
  return [{ weight: preference.safety ? SAFETY : weight, meets: { code, ...traced } }];
}

function missed({ shoe }: Scored, need: Need, part: number, health: ReadonlySet<string>): readonly Weighed[] {
  const { attribute, ideal, importance, reasons, toward } = need;
  const value = shoe.numbers[attribute];
  const say = (direction: 'more' | 'less' | 'unknown'): Weighed => ({
    weight: importance * (1 - part),
    meets: { code: `${attribute}-${direction}`, attribute, ...tracedTo(reasons, health) },
  });
  if (value === undefined) return importance >= IMPORTANT ? [say('unknown')] : [];
  const direction = value > ideal[1] ? 'more' : 'less';
  // Further than asked, on the side the customer wished for, speaks against no pair.
  return part > WORTH_SAYING || direction === toward ? [] : [say(direction)];
}

/** Traced to `stock`: no answer of the customer's brings these about. They weigh less than a need that is clearly missed. */
function ofTheStock({ shoe }: Scored, lastPair: boolean): readonly Weighed[] {
  const runs = runsOf(shoe);
  return [
    ...(runs === undefined ? [] : [{ weight: 0.2, meets: { code: `runs-${runs}`, from: 'stock' } }]),
    ...(lastPair ? [{ weight: 0.1, meets: { code: 'last-pair', from: 'stock' } }] : []),
  ];
}
