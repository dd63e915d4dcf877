import { describe, expect, it } from 'vitest';
import { sentencesOf } from '../../src/words/bundle.ts';
import { differences, oddPlurals } from './differences.ts';
import { LANGUAGES, wordFiles } from './word-files.ts';

/** Units are set behind a number as they stand: some with a space before them, some with nothing. */
const SUFFIX = /^card\.unit\./;
const english = wordFiles('en');
const others = LANGUAGES.filter((language) => language !== 'en');

describe.each(others)('%s beside English', (language) => {
  const files = wordFiles(language);

  it('has the same word files', () => {
    expect([...files.keys()].sort()).toEqual([...english.keys()].sort());
  });

  it.each([...english])('says the same things with the same data in %s', (area, bundle) => {
    expect(differences(bundle, files.get(area) ?? {})).toEqual([]);
  });
});

describe.each(LANGUAGES)('every word file in %s', (language) => {
  const files = [...wordFiles(language)];

  it('has each plural form of its language', () => {
    for (const [, bundle] of files) expect(oddPlurals(language, bundle)).toEqual([]);
  });

  it('has no empty sentence, and none with space at its ends', () => {
    const sentences = files.flatMap(([area, bundle]) =>
      [...sentencesOf(bundle)].map(([key, text]) => [area, key, text]),
    );
    expect(
      sentences.filter(([, key, text = '']) => !SUFFIX.test(key ?? '') && (text === '' || text !== text.trim())),
    ).toEqual([]);
  });

  it('says nothing that another file says too', () => {
    const owners = new Map<string, string[]>();
    for (const [area, bundle] of files) {
      for (const key of sentencesOf(bundle).keys()) owners.set(key, [...(owners.get(key) ?? []), area]);
    }
    expect([...owners].filter(([, areas]) => areas.length > 1)).toEqual([]);
  });
});

describe('a planted fault is seen', () => {
  const whole = { a: { b: 'Hello {{name}}', c_one: '{{count}} shoe', c_other: '{{count}} shoes' } };
  it.each([
    ['a hole', { a: { c_one: '{{count}} Schuh', c_other: '{{count}} Schuhe' } }, ['a.b only in the first']],
    ['other data', { a: { ...whole.a, b: 'Hallo {{names}}' } }, ['a.b asks for {name} and {names}']],
    ['one too many', { a: whole.a, d: 'Da' }, ['d only in the second']],
  ])('%s', (_, other, expected) => {
    expect(differences(whole, other)).toEqual(expected);
  });

  it('a missing plural form', () => {
    expect(oddPlurals('en', { shoe_one: 'shoe' })).toEqual(['shoe has one']);
    expect(oddPlurals('pl', { but_one: 'but', but_other: 'buta' })).toEqual(['but has one other']);
    expect(oddPlurals('ar', { pair_one: 'زوج', pair_other: 'زوج' })).toEqual(['pair has one other']);
    expect(oddPlurals('en', { pair_zero: 'none', pair_one: 'pair', pair_other: 'pairs' })).toEqual([]);
  });
});
