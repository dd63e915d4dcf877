import { latinDigits } from './latin-digits.ts';

/**
 * The language for dates, for `Intl`, its digits fixed as for numbers. English by itself would put the month first, as
 * the United States do and nobody else; the day first with the month by name is read rightly everywhere.
 *
 * @example
 * ```ts
 * dateLanguage('en') // 'en-GB-u-nu-latn'
 * dateLanguage('de') // 'de-u-nu-latn'
 * ```
 */
export const dateLanguage = (language: string): string => latinDigits(language === 'en' ? 'en-GB' : language);
