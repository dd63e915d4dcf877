import { createInstance } from 'i18next';
import { dateLanguage } from '../units/date-language.ts';
import { latinDigits } from '../units/latin-digits.ts';
import { type Bundle, mergeBundles } from './bundle.ts';
import { NoWords } from './no-words.ts';
import type { WordData, Words } from './words.ts';

/** Sentences are not HTML: screens put them in as text, the card draws them. Escaping would print `&lt;`. */
const NO_ESCAPING = { escapeValue: false };
const FILE = 'words';

/**
 * The words of one language, from its word files.
 *
 * Numbers put into a sentence are written as the language writes them; a number that must not be grouped
 * (a year) is passed as text. A missing sentence, a group taken for a sentence, and a `{{placeholder}}` without
 * data throw: each is a bug, and an empty or foreign sentence on a card would hide it.
 *
 * @example
 * ```ts
 * const words = wordsOf('de', [{ left: { over_one: 'noch {{count}} Paar', over_other: 'noch {{count}} Paare' } }]);
 * words.say('left.over', { count: 2 }); // 'noch 2 Paare'
 * words.number(42.5); // '42,5'
 * words.date('2026-11-25'); // '25. November 2026'
 * ```
 */
export function wordsOf(language: string, bundles: readonly Bundle[]): Words {
  const i18n = createInstance();
  void i18n.init({
    lng: language,
    // No second language behind the first: a hole must show, not be filled in English.
    fallbackLng: false,
    ns: [FILE],
    defaultNS: FILE,
    nsSeparator: false,
    initAsync: false,
    resources: { [language]: { [FILE]: mergeBundles(bundles) } },
    interpolation: NO_ESCAPING,
    missingInterpolationHandler: (sentence: string, placeholder: RegExpExecArray) => {
      throw new Error(`No data for ${placeholder[0]} in "${sentence}" (${language})`);
    },
  });
  // Made when first asked for: the first pages hold neither number nor date, and making these takes longer than drawing them.
  let longDate: Intl.DateTimeFormat | undefined;
  const numbers = new Map<number | undefined, Intl.NumberFormat>();
  const numbersOf = (fractionDigits: number | undefined): Intl.NumberFormat => {
    const made =
      numbers.get(fractionDigits) ??
      new Intl.NumberFormat(latinDigits(language), {
        minimumFractionDigits: fractionDigits ?? 0,
        maximumFractionDigits: fractionDigits ?? 2,
      });
    numbers.set(fractionDigits, made);
    return made;
  };
  const number = (value: number, fractionDigits?: number): string => numbersOf(fractionDigits).format(value);
  const at = (key: string): unknown => i18n.getResource(language, FILE, key);
  // Plural forms stand beside each other as `key_one`, `key_other`. Asking the library for them takes a rule of plurals
  // out of the browser, which a page without any does not need.
  const hasPlurals = (key: string): boolean => {
    const dot = key.lastIndexOf('.');
    const siblings = at(key.slice(0, Math.max(dot, 0)));
    const forms = `${key.slice(dot + 1)}_`;
    return Object.keys(Object(siblings)).some((each) => each.startsWith(forms)) && i18n.exists(key, { count: 0 });
  };
  const has = (key: string): boolean => {
    const found = at(key);
    return typeof found === 'string' || (typeof found !== 'object' && hasPlurals(key));
  };
  const written = (data: WordData): WordData =>
    Object.fromEntries(
      Object.entries(data).map(([name, value]) => [
        name,
        // `count` stays a number: it chooses the plural.
        typeof value === 'number' && name !== 'count' ? number(value) : value,
      ]),
    );
  return {
    language,
    direction: i18n.dir(language),
    has,
    number,
    say(key, data) {
      // Most sentences stand as they are; a page of thirty is spared thirty searches for plurals and placeholders.
      const plain = data === undefined ? at(key) : undefined;
      if (typeof plain === 'string' && !/\{\{|\$t\(/.test(plain)) return plain;
      if (!has(key)) throw new NoWords(key, language);
      if (data?.['count'] === undefined && !i18n.exists(key)) {
        throw new Error(`"${key}" in "${language}" has plural forms and needs a count`);
      }
      return i18n.t(key, written(data ?? {}));
    },
    date(iso) {
      longDate ??= new Intl.DateTimeFormat(dateLanguage(language), { dateStyle: 'long', timeZone: 'UTC' });
      return longDate.format(new Date(`${iso}T00:00:00Z`));
    },
  };
}
