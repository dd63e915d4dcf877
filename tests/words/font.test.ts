import { describe, expect, it } from 'vitest';
import { sentencesOf } from '../../src/words/bundle.ts';
import { wordsOf } from '../../src/words/words-of.ts';
import { missingInCardFont as missing } from '../card/card-font.ts';
import { allWords, LANGUAGES } from './word-files.ts';

/** Languages that run right to left print their card from the screen, in the browser's own font. */
const printed = LANGUAGES.filter((language) => wordsOf(language, []).direction === 'ltr');

describe.each(printed)('the font of the card, in %s', (language) => {
  it('has every character that any sentence may bring', () => {
    const lacking = [...sentencesOf(allWords(language))].flatMap(([key, text]) =>
      missing(text).map((char) => `${key}: ${char}`),
    );
    expect(lacking).toEqual([]);
  });

  it('has every character of a number, a price and a date', () => {
    const words = wordsOf(language, []);
    const price = new Intl.NumberFormat(language, { style: 'currency', currency: 'EUR' }).format(1234.5);
    expect(missing(`${words.number(12345.6)} ${words.date('2026-08-25')} ${price}`)).toEqual([]);
  });
});

it('lacks what it lacks', () => {
  expect(missing('قدم')).toEqual(['ق', 'د', 'م']);
});
