import { describe, expect, it } from 'vitest';
import { sentencesOf } from '../../src/words/bundle.ts';
import { LANGUAGES, wordFiles } from './word-files.ts';

/** Characters, as they fit on a tablet held upright: one line of a title, two of a button. Common practice. */
const BOUNDS: readonly (readonly [string, RegExp, number])[] = [
  ['a title in one line', /^question\.[^.]+\.ask$/, 59],
  ['a reason why in three lines', /^question\.[^.]+\.why$/, 150],
  ['a hint in two lines', /^question\.[^.]+\.hint$/, 120],
  ['a sign in two lines', /^question\.signs\.option\./, 75],
  ['an option on its button', /^question\.(?!signs\.)[^.]+\.(option\..+|region\..+|property\..+)$/, 38],
  ['a row of a table on its button', /^(activity|activity-group|floor|floor-group|shoe-kind|shoe-kind-group)\./, 36],
  ['a section in the stub', /^section\./, 20],
];

describe.each(LANGUAGES)('in %s', (language) => {
  const texts = [...sentencesOf(wordFiles(language).get('fitting/words') ?? {})];

  it.each(BOUNDS)('%s', (_, keys, most) => {
    const bound = texts.filter(([key]) => keys.test(key));
    expect(bound).not.toEqual([]);
    expect(bound.filter(([, text]) => [...text].length > most)).toEqual([]);
  });

  it('every title is a question', () => {
    expect(texts.filter(([key, text]) => key.endsWith('.ask') && !/[?؟]$/.test(text))).toEqual([]);
  });
});
