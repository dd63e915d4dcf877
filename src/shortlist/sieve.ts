import type { Must } from '../profile/profile.ts';
import type { Shoe } from '../stock/shoe.ts';
import { meets } from './musts.ts';
import type { LineUp, Removed } from './shortlist.ts';

/** What the musts leave of the stock, and what each of them took. */
export interface Sieved extends Pick<LineUp, 'removed' | 'ifDropped'> {
  readonly left: readonly Shoe[];
  /** The shoes that each must alone keeps out; musts that keep none out by themselves are left out. */
  readonly keptOut: readonly {
    readonly must: string;
    readonly value: Must['value'];
    readonly shoes: readonly Shoe[];
  }[];
}

/** A box in the customer's size on hand: always a must, judged by the stock and not by a rule. */
const SIZE = { attribute: 'size', value: true } as const;

/**
 * Keeps the shoes that meet every must and are on hand in the size. Nothing is ever widened in silence: when nothing
 * is left, it says how many pairs each single must would give back.
 */
export function sieve(shoes: readonly Shoe[], musts: readonly Must[], inSize: (shoe: Shoe) => boolean): Sieved {
  const left: Shoe[] = [];
  const taken = [...musts, SIZE].map(({ attribute: must, value }) => ({
    must,
    value,
    count: 0,
    unrecorded: 0,
    alone: [] as Shoe[],
  }));
  for (const shoe of shoes) {
    const stopped: (typeof taken)[number][] = [];
    musts.forEach((must, i) => {
      const met = meets(shoe, must);
      if (met === 'yes') return;
      const row = taken[i] as (typeof taken)[number];
      stopped.push(row);
      if (met === 'unrecorded') row.unrecorded += 1;
    });
    if (!inSize(shoe)) stopped.push(taken[musts.length] as (typeof taken)[number]);
    for (const row of stopped) row.count += 1;
    const only = stopped[0];
    if (only === undefined) left.push(shoe);
    else if (stopped.length === 1) only.alone.push(shoe);
  }
  const keptOut = taken.flatMap(({ must, value, alone }) => (alone.length > 0 ? [{ must, value, shoes: alone }] : []));
  return {
    left,
    keptOut,
    removed: taken.flatMap(({ alone: _, ...row }): Removed[] => (row.count > 0 ? [row] : [])),
    ifDropped:
      left.length > 0
        ? []
        : keptOut
            .map(({ must, value, shoes: kept }) => ({ must, value, pairs: kept.length }))
            .sort((a, b) => b.pairs - a.pairs),
  };
}
