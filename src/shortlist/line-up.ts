import type { Need } from '../profile/profile.ts';
import { contrastTo, isFirmerInner } from './contrast.ts';
import { likeness } from './likeness.ts';
import { nextPick } from './mmr.ts';
import type { Scored } from './scored.ts';
import type { Part } from './shortlist.ts';

/** Pairs looked at when the line-up is picked and its sureness measured: the first forty in order. Our choice. */
export const POOL = 40;

/** Weight of closeness against difference: for the second pair, and for the one that is there to differ. Our choice. */
const LAMBDA = { close: 0.7, contrast: 0.5 } as const;

/** A contrast that misses most wishes teaches nothing: it keeps at least this share of the first pair's desirability. */
const FAIR_SHARE = 0.6;

export interface Placed {
  readonly scored: Scored;
  readonly part: Part;
}

/**
 * The three pairs to try, from shoes in their order: the first, one almost as close but not its twin, and one that
 * differs where it matters. When the profile asks to compare a pair firmer on the inner side, that is the third.
 * Fewer than three only when there are fewer shoes.
 */
export function pickLineUp(
  inOrder: readonly Scored[],
  needs: readonly Need[],
  firmerInner: boolean,
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

  const fair = all.filter((i) => at(i).desirability >= FAIR_SHARE * first.desirability);
  // In their order, not by difference: the nearest pair that has what is to be compared. Kept from becoming the second.
  const inner = firmerInner ? fair.find((i) => isFirmerInner(first.shoe, at(i).shoe)) : undefined;
  const second = pick(
    all.filter((i) => i !== inner),
    [0],
    LAMBDA.close,
  );
  const taken = second === undefined ? [0] : [0, second];
  const named = fair.filter((i) => contrastTo(first.shoe, at(i).shoe, needs) !== undefined);
  const third = inner ?? pick(named, taken, LAMBDA.contrast) ?? pick(all, taken, LAMBDA.close);
  const contrast = (i: number): Part =>
    i === inner ? 'firmer-inner' : (contrastTo(first.shoe, at(i).shoe, needs) ?? 'also-close');
  return [
    { scored: first, part: 'closest' },
    ...(second === undefined ? [] : [{ scored: at(second), part: 'also-close' }]),
    ...(third === undefined ? [] : [{ scored: at(third), part: contrast(third) }]),
  ];
}
