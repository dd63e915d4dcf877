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

/** The pairs of every line-up, each once, then those pulled in by hand: letters run on, as on the card. */
export function pairsToTry(line: Line, pulledIn: readonly Entry[]): readonly PairToTry[] {
  const seen = new Map<string, PairToTry>();
  for (const { shoe, boxes } of [...line.shortlist.lineUps.flatMap(({ entries }) => entries), ...pulledIn]) {
    if (seen.has(shoe.id)) continue;
    seen.set(shoe.id, { letter: letterOf(seen.size), shoe, boxes: boxes.map(({ box }) => box) });
  }
  return [...seen.values()];
}
