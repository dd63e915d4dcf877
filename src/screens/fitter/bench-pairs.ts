import { letterOf } from '../../card/pairs.ts';
import type { Entry } from '../../shortlist/shortlist.ts';
import type { BenchLine } from '../../worker/bench-line.ts';

/** A pair as the bench speaks of it: by its letter, running on over all line-ups and then the pairs pulled in. */
export interface BenchPair {
  readonly letter: string;
  readonly entry: Entry;
  /** What a pair pulled in by hand does not meet. */
  readonly fails?: readonly string[];
}

/** Every pair on the bench once, in the order of its letter. */
export function pairsOn({ line, pulledIn }: Pick<BenchLine, 'line' | 'pulledIn'>): readonly BenchPair[] {
  const pairs = new Map<string, Omit<BenchPair, 'letter'>>();
  for (const entry of line.shortlist.lineUps.flatMap(({ entries }) => entries)) {
    if (!pairs.has(entry.shoe.id)) pairs.set(entry.shoe.id, { entry });
  }
  for (const { entry, fails } of pulledIn) if (!pairs.has(entry.shoe.id)) pairs.set(entry.shoe.id, { entry, fails });
  return [...pairs.values()].map((pair, at) => ({ letter: letterOf(at), ...pair }));
}
