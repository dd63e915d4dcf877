import type { Words } from '../../words/words.ts';

/** A counted thing with its count grouped as the language groups it: `2,818 boxes`. */
export const countText = (words: Words, key: string, count: number): string =>
  words.say(key, { count }).replace(String(count), words.number(count));
