import { latinDigits } from './latin-digits.ts';

/**
 * A sum as a language writes it, in a currency by its ISO 4217 code; whole sums without a fraction.
 *
 * @example
 * moneyText(120, 'EUR', 'en') // '€120'
 * moneyText(120, 'EUR', 'de') // '120 €', with a space that does not break
 */
export const moneyText = (sum: number, currency: string, language: string): string =>
  new Intl.NumberFormat(latinDigits(language), {
    style: 'currency',
    currency,
    trailingZeroDisplay: 'stripIfInteger',
  }).format(sum);
