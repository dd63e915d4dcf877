import { letterOf } from '../../card/pairs.ts';
import type { Entry } from '../../shortlist/shortlist.ts';
import type { LabelSystem } from '../../stock/shoe.ts';
import { type Box, LABEL_SYSTEMS } from '../../stock/shoe.ts';
import type { Words } from '../../words/words.ts';
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

/** The labels printed on a box, each as printed, the one the shop's boxes are looked for by first: `EU 42`, `UK 8`. */
export const labelsOf = ({ labels }: Box, words: Words): readonly string[] =>
  LABEL_SYSTEMS.flatMap((system: LabelSystem) => {
    const label = labels[system];
    return label === undefined ? [] : [words.say(`card.label.${system}`, { label })];
  });

/** All of them in a line: `EU 42 · UK 8`. */
export const labelsText = (box: Box, words: Words): string => labelsOf(box, words).join(' · ');

/** What a line-up is for, in words; `all` has none. */
export function forText(part: string, words: Words): string {
  const own = `card.line-up.${part}`;
  return words.has(own) ? words.say(own) : words.say(`activity.${part}`);
}
