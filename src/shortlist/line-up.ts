import { attribute } from '../attributes/table.ts';
import type { Need, Preference } from '../profile/profile.ts';
import type { Shoe } from '../stock/shoe.ts';
import { contrastTo, isFirmerInner } from './contrast.ts';
import { likeness } from './likeness.ts';
import { nextPick } from './mmr.ts';
import { isMadeFor, wishMet } from './preferred.ts';
import type { Scored } from './scored.ts';
import type { Part } from './shortlist.ts';

/** Pairs looked at when the line-up is picked and its sureness measured: the first forty in order. Our choice. */
export const POOL = 40;

/** Pairs in a line-up: as many as a customer tries with care and a fitter carries. Common practice. */
export const LINE_UP = 3;

/** Weight of closeness against difference: for the second pair, and for the one that is there to differ. Our choice. */
const LAMBDA = { close: 0.7, contrast: 0.5 } as const;

/**
 * A pair that misses most wishes teaches nothing: to compare with, it keeps at least this share of the first pair's
 * desirability; the lesser share only where it is made for what is done in it. Our choice.
 */
const FAIR_SHARE = 0.75;
const LEAST_SHARE = 0.6;

/** Two contrasts are alike in desirability from this share on: then the one that goes the customer's way. Our choice. */
const LIKE_SHARE = 0.9;

/** From this importance on the ground demands its tread, and a pair keeps to it that meets at least so much of that. Our choice. */
const GROUND = { from: 0.3, least: 0.5 } as const;

/** A pair of which at least this share of the needs, by importance, is recorded can be compared with others. Our choice. */
const RECORDED_SHARE = 0.5;

export interface Placed {
  readonly scored: Scored;
  readonly part: Part;
}

/**
 * The three pairs to try, from shoes in their order: the first, one almost as close but not its twin, and one that
 * differs where it matters. When the profile asks to compare a pair firmer on the inner side, that is the third.
 *
 * As long as there are such, the second and the third are sold for what is done in them and recorded well enough to
 * compare; failing those, they at least keep the tread that the ground demands and what bears on staying upright. Fewer than three only when there are fewer shoes.
 */
export function pickLineUp(
  inOrder: readonly Scored[],
  needs: readonly Need[],
  firmerInner: boolean,
  preferences: readonly Preference[] = [],
): readonly Placed[] {
  const pool = inOrder.slice(0, POOL);
  const first = pool[0];
  if (first === undefined) return [];
  const all = pool.map((_, i) => i);
  const at = (i: number) => pool[i] as Scored;
  const pick = (candidates: readonly number[], picked: readonly number[], lambda: number) =>
    nextPick(
      candidates,
      picked,
      (i) => at(i).desirability / first.desirability,
      (i, j) => likeness(at(i).shoe, at(j).shoe, needs),
      lambda,
    )?.index;

  const from = (share: number) => all.filter((i) => at(i).desirability >= share * first.desirability);
  const fair = from(FAIR_SHARE);
  const isSound = (i: number) => keepsSafe(at(i), first, needs, preferences);
  const fit = from(LEAST_SHARE).filter((i) => isSound(i) && isFit(at(i).shoe, needs, preferences));
  /** Where to look, the best place first. */
  const places = [fit.filter((i) => fair.includes(i)), fit, fair.filter(isSound), fair, from(LEAST_SHARE), all];
  // In their order, not by difference: the nearest pair that has what is to be compared. Kept from becoming the second.
  const inner = firmerInner ? from(LEAST_SHARE).find((i) => isFirmerInner(first.shoe, at(i).shoe)) : undefined;
  // Another shelf's version of a pair is the same shoe.
  const apart = (candidates: readonly number[], picked: readonly number[]) =>
    candidates.filter((i) => i !== inner && !picked.some((j) => at(j).shoe.name === at(i).shoe.name));

  const second = firstFound(places, (place) => pick(apart(place, [0]), [0], LAMBDA.close)) ?? pick(all, [0], 1);
  const taken = second === undefined ? [0] : [0, second];
  const contrast = (i: number) => contrastTo(first.shoe, at(i).shoe, needs);
  const contrasting = (place: readonly number[]): number | undefined => {
    const named = place.filter((i) => contrast(i) !== undefined);
    const found = pick(named, taken, LAMBDA.contrast);
    if (found === undefined || !contrast(found)?.unwanted) return found;
    const like = named.filter((i) => at(i).desirability >= LIKE_SHARE * at(found).desirability);
    return (
      pick(
        like.filter((i) => !contrast(i)?.unwanted),
        taken,
        LAMBDA.contrast,
      ) ?? found
    );
  };
  const third =
    inner ??
    firstFound(places.slice(0, 2), (place) => contrasting(apart(place, taken))) ??
    firstFound(places.slice(1), (place) => pick(apart(place, taken), taken, LAMBDA.close)) ??
    pick(all, taken, LAMBDA.close);
  return [
    { scored: first, part: 'closest' },
    ...(second === undefined ? [] : [{ scored: at(second), part: 'also-close' }]),
    ...(third === undefined
      ? []
      : [{ scored: at(third), part: third === inner ? 'firmer-inner' : (contrast(third)?.part ?? 'also-close') }]),
  ];
}

function firstFound(
  places: readonly (readonly number[])[],
  find: (place: readonly number[]) => number | undefined,
): number | undefined {
  for (const place of places) {
    const found = find(place);
    if (found !== undefined) return found;
  }
  return undefined;
}

/**
 * Trades away neither the tread that the ground demands, as far as the first pair has it, nor what keeps upright, nor
 * room whose lack would not be felt.
 */
function keepsSafe(
  { shoe, parts }: Scored,
  first: Scored,
  needs: readonly Need[],
  preferences: readonly Preference[],
): boolean {
  const ground = needs.findIndex(({ attribute, importance }) => attribute === 'lug-depth' && importance >= GROUND.from);
  const tread = (of: readonly number[]) => Math.min(GROUND.least, of[ground] ?? 0);
  if (ground >= 0 && shoe.numbers['lug-depth'] !== undefined && tread(parts) < tread(first.parts)) return false;
  if (needs.some((need) => need.neverLess && hasLess(shoe, first.shoe, need))) return false;
  return preferences.every((each) => each.kind === 'use' || !each.safety || wishMet(shoe, each) !== 'no');
}

/** Less than is wanted, and than the first pair has, by half a noticeable step or more. */
function hasLess({ numbers }: Shoe, { numbers: ofFirst }: Shoe, { attribute: key, ideal }: Need): boolean {
  const value = numbers[key];
  return value !== undefined && Math.min(ideal[0], ofFirst[key] ?? ideal[0]) - value >= attribute(key).step / 2;
}

/** Sold for it, and recorded well enough to compare. */
function isFit(shoe: Shoe, needs: readonly Need[], preferences: readonly Preference[]): boolean {
  let [whole, recorded] = [0, 0];
  for (const { attribute, importance } of needs) {
    whole += importance;
    if (shoe.numbers[attribute] !== undefined) recorded += importance;
  }
  return recorded >= RECORDED_SHARE * whole && isMadeFor(shoe, preferences);
}
