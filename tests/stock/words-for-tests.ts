import deAttributes from '../../flows/words/de/attributes.json';
import deStock from '../../flows/words/de/stock.json';
import enAttributes from '../../flows/words/en/attributes.json';
import enStock from '../../flows/words/en/stock.json';
import type { Finding } from '../../src/units/result.ts';
import type { Words } from '../../src/words/words.ts';
import { wordsOf } from '../../src/words/words-of.ts';

export const LANGUAGES: readonly Words[] = [
  wordsOf('en', [enAttributes, enStock]),
  wordsOf('de', [deAttributes, deStock]),
];

/** A finding as the shop reads it. Throws when a language has no words for it or a gap in them. */
export function said(words: Words, { code, line, column, value, data }: Finding): string {
  return words.say(`finding.${code}`, {
    ...(line === undefined ? {} : { line }),
    ...(column === undefined ? {} : { column }),
    ...(value === undefined ? {} : { value }),
    ...data,
  });
}
