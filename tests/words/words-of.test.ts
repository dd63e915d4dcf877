import { describe, expect, it } from 'vitest';
import { dateLanguage } from '../../src/units/date-language.ts';
import { latinDigits } from '../../src/units/latin-digits.ts';
import type { KeyOf } from '../../src/words/keys.ts';
import { wordsOf } from '../../src/words/words-of.ts';
import { allWords, LANGUAGES } from './word-files.ts';

/** Toy sentences. Polish has four plural forms (Unicode plural rules: 1 one, 2 to 4 few, 5 many, fractions other). */
const english = wordsOf('en', [
  { greet: 'Hello {{name}}', left: { pairs_one: '{{count}} pair left', pairs_other: '{{count}} pairs left' } },
  { long: '{{mm}} mm' },
]);
const polish = wordsOf('pl', [
  { para_one: '{{count}} para', para_few: '{{count}} pary', para_many: '{{count}} par', para_other: '{{count}} pary' },
]);

describe('the words of a language', () => {
  it('wordsOf: say sentences, plurals, numbers and dates as the language does', () => {
    const words = wordsOf('de', [{ left: { over_one: 'noch {{count}} Paar', over_other: 'noch {{count}} Paare' } }]);
    expect(words.say('left.over', { count: 2 })).toBe('noch 2 Paare');
    expect(words.say('left.over', { count: 1 })).toBe('noch 1 Paar');
    expect(words.number(42.5)).toBe('42,5');
    expect(words.date('2026-11-25')).toBe('25. November 2026');
  });

  it('write numbers inside a sentence as the language does', () => {
    expect(english.say('long', { mm: 265.5 })).toBe('265.5 mm');
    expect(wordsOf('de', [{ long: '{{mm}} mm' }]).say('long', { mm: 265.5 })).toBe('265,5 mm');
    expect(english.number(7, 1)).toBe('7.0');
  });

  it('have all plural forms of languages with more than two', () => {
    expect([1, 3, 5, 1.5].map((count) => polish.say('para', { count }))).toEqual([
      '1 para',
      '3 pary',
      '5 par',
      '1.5 pary',
    ]);
  });

  it('never turn a name into markup, nor run what stands in it', () => {
    expect(english.say('greet', { name: '<b>& "co"' })).toBe('Hello <b>& "co"');
    expect(english.say('greet', { name: '$t(long) {{mm}}' })).toBe('Hello $t(long) {{mm}}');
  });

  it('throw the name of a sentence that is not there', () => {
    expect(() => english.say('question.gone.ask')).toThrow('No words for "question.gone.ask" in "en"');
    expect(() => english.say('left')).toThrow('"left"');
    expect(() => english.say('')).toThrow();
    expect(() => english.say('constructor')).toThrow('"constructor"');
  });

  it('throw when a sentence is not given what it needs', () => {
    expect(() => english.say('greet')).toThrow('No data for {{name}}');
    expect(() => english.say('left.pairs')).toThrow('needs a count');
  });

  it('know which sentences they have', () => {
    expect(['greet', 'left.pairs', 'left', 'gone'].map((key) => english.has(key))).toEqual([true, true, false, false]);
  });

  it('do not mix with those of another language in the same kiosk', () => {
    expect(polish.has('greet')).toBe(false);
    expect(english.say('left.pairs', { count: 2 })).toBe('2 pairs left');
  });

  it('know the direction they are read in', () => {
    expect([english.direction, wordsOf('ar', []).direction]).toEqual(['ltr', 'rtl']);
  });

  it('latinDigits: keep a size in the digits its box is printed with', () => {
    expect(latinDigits('ar')).toBe('ar-u-nu-latn');
    // Egypt and Persian write other digits wherever they are not told not to (Unicode CLDR).
    expect(new Intl.NumberFormat('ar-EG').format(42)).toBe('٤٢');
    for (const language of ['ar', 'ar-EG', 'fa']) {
      const words = wordsOf(language, [{ long: '{{mm}} mm' }]);
      expect([words.number(42), words.say('long', { mm: 265 })]).toEqual(['42', '265 mm']);
      expect(words.date('2026-11-25')).toMatch(/\d/);
    }
  });

  it('dateLanguage: write a date with its month by name and the day first, so that nobody takes one for the other', () => {
    expect(dateLanguage('en')).toBe('en-GB-u-nu-latn');
    expect(dateLanguage('de')).toBe('de-u-nu-latn');
    const dates = LANGUAGES.map((language) => wordsOf(language, []).date('2026-11-05').replaceAll('\u00a0', ' '));
    // As the Unicode CLDR writes them.
    expect(Object.fromEntries(LANGUAGES.map((language, at) => [language, dates[at]]))).toEqual({
      ar: '5 نوفمبر 2026',
      de: '5. November 2026',
      en: '5 November 2026',
      es: '5 de noviembre de 2026',
      fr: '5 novembre 2026',
    });
  });

  it.each(LANGUAGES)('of the shop hold in one piece (%s)', (language) => {
    const words = wordsOf(language, [allWords(language)]);
    expect(words.say('question.reason.ask')).toMatch(/[?؟]$/);
  });

  it('have keys that do not compile when mistyped', () => {
    type Key = KeyOf<{ a: { b: 'x'; c_one: 'x'; c_other: 'x' } }>;
    const keys: readonly Key[] = ['a.b', 'a.c'];
    // @ts-expect-error no such key
    const wrong: Key = 'a.d';
    expect([...keys, wrong]).toEqual(['a.b', 'a.c', 'a.d']);
  });
});
