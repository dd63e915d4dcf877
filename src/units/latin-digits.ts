/**
 * The language with its digits fixed to 0 to 9, for `Intl`. Some languages write other digits by default, in some
 * browsers; but a size is printed on its box in these, and a customer has to find the same signs there.
 *
 * @example
 * ```ts
 * latinDigits('ar') // 'ar-u-nu-latn'
 * ```
 */
export const latinDigits = (language: string): string =>
  new Intl.Locale(language, { numberingSystem: 'latn' }).toString();
