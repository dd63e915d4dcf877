import type { Box } from '../stock/shoe.ts';
import type { Shortlist } from './shortlist.ts';

/** One box for the stockroom to bring. */
export interface Pull {
  readonly box: Box;
  readonly name: string;
  /** Where it is wanted: the line-up, its place there, and whether it is the first box to try or the second. */
  readonly wanted: readonly { readonly for: string; readonly place: number; readonly turn: 1 | 2 }[];
}

/** Shelf marks as people count: C2 before C10. */
const byShelf = new Intl.Collator('en', { numeric: true });

/**
 * The boxes of all line-ups in the order of the shelves, so that they are fetched in one walk; on a shelf, the ones to
 * try first come first. Each box once.
 */
export function pullList({ lineUps }: Pick<Shortlist, 'lineUps'>): readonly Pull[] {
  const pulls = new Map<string, Pull>();
  for (const lineUp of lineUps)
    for (const { shoe, place, boxes } of lineUp.entries)
      boxes.slice(0, 2).forEach(({ box }, i) => {
        const wanted = [
          ...(pulls.get(box.id)?.wanted ?? []),
          { for: lineUp.for, place, turn: i === 0 ? 1 : 2 } as const,
        ];
        pulls.set(box.id, { box, name: shoe.name, wanted });
      });
  return [...pulls.values()].sort(
    (a, b) => byShelf.compare(a.box.place, b.box.place) || turnOf(a) - turnOf(b) || (a.box.id < b.box.id ? -1 : 1),
  );
}

/** What is tried first comes before what is there in case of doubt. */
const turnOf = ({ wanted }: Pull): number => Math.min(...wanted.map(({ turn }) => turn));
