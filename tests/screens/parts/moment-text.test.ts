import { expect, it } from 'vitest';
import { momentText } from '../../../src/screens/parts/moment-text.ts';
import { wordsOf } from '../../../src/words/words-of.ts';

it('the age of a stock list has its day before its month, and an hour of twenty-four where that is usual', () => {
  const said = (language: string) => momentText('2026-11-05T09:12:00', wordsOf(language, []));
  expect(said('en')).toBe('5 Nov 2026, 09:12');
  expect(said('de')).toBe('05.11.2026, 09:12');
});
