import { dir } from 'i18next';

/**
 * Whether a language is written from right to left.
 *
 * @example
 * ```ts
 * rightToLeft('ar') // true
 * rightToLeft('de') // false
 * ```
 */
export const rightToLeft = (language: string): boolean => dir(language) === 'rtl';
