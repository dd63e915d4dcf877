import { letterOf } from '../../card/pairs.ts';
import type { Entry } from '../../shortlist/shortlist.ts';
import type { BenchLine } from '../../worker/bench-line.ts';

/** A pair as the bench speaks of it: by its letter, which it keeps whatever comes and goes beside it. */
export interface BenchPair {
  readonly letter: string;
  readonly entry: Entry;
  /** What a pair pulled in by hand does not meet. */
  readonly fails?: readonly string[];
}

/** Every pair on the bench once: those of the line-ups, then those pulled in. */
export function pairsOn({
  line,
  pulledIn,
  letters,
}: Pick<BenchLine, 'line' | 'pulledIn' | 'letters'>): readonly BenchPair[] {
  const pairs = new Map<string, Omit<BenchPair, 'letter'>>();
  for (const entry of line.shortlist.lineUps.flatMap(({ entries }) => entries)) {
    if (!pairs.has(entry.shoe.id)) pairs.set(entry.shoe.id, { entry });
  }
  for (const { entry, fails } of pulledIn) if (!pairs.has(entry.shoe.id)) pairs.set(entry.shoe.id, { entry, fails });
  return [...pairs].map(([id, pair]) => ({ letter: letterOf(letters.indexOf(id)), ...pair }));
}
