import { expect, it } from 'vitest';
import { wordsOf } from '../../../src/words/words-of.ts';
import { allWords, LANGUAGES } from '../../words/word-files.ts';

/** Whoever speaks to the tablet says what they see: WCAG 2.1, 2.5.3 Label in Name. */
it.each(LANGUAGES)('a fitter who says the Undo they see in %s is understood, whatever it takes back', (language) => {
  const words = wordsOf(language, [allWords(language)]);
  const seen = words.say('bench.undo');
  expect(words.say('bench.undo-what', { what: words.say('measure.left') }).startsWith(seen)).toBe(true);
});
