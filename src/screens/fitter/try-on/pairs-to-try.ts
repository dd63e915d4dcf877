import { letterOf } from '../../../card/pairs.ts';
import type { Line } from '../../../pipeline.ts';
import type { Entry } from '../../../shortlist/shortlist.ts';
import type { Box, Shoe } from '../../../stock/shoe.ts';

/** One pair that may be tried, with the letter that the card and the bench call it by. */
export interface PairToTry {
  readonly letter: string;
  readonly shoe: Shoe;
  /** Boxes to fetch, first first. */
  readonly boxes: readonly Box[];
}

/**
 * The pairs of every line-up, each once, then those pulled in by hand. `letters` are shoe ids in the order of their
 * letters; a shoe not among them takes the next.
 */
export function pairsToTry(
  line: Line,
  pulledIn: readonly Entry[],
  letters: readonly string[] = [],
): readonly PairToTry[] {
  const order = new Set(letters);
  const seen = new Map<string, PairToTry>();
  for (const { shoe, boxes } of [...line.shortlist.lineUps.flatMap(({ entries }) => entries), ...pulledIn]) {
    if (seen.has(shoe.id)) continue;
    order.add(shoe.id);
    seen.set(shoe.id, { letter: letterOf([...order].indexOf(shoe.id)), shoe, boxes: boxes.map(({ box }) => box) });
  }
  return [...seen.values()];
}
