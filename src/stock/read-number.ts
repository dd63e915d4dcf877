/** A number in a stock list, or why it is none. */
export type NumberCell =
  | { readonly value: number }
  | { readonly code: 'stock-not-a-number' | 'stock-not-whole' | 'stock-out-of-range' };

export interface NumberLimits {
  readonly from: number;
  readonly to: number;
  /** A unit that may stand behind it: `8 mm`. */
  readonly unit?: 'g' | 'mm' | 'money';
  readonly whole?: boolean;
}

const UNITS = {
  g: /\s*(?:g|gr|grams?|gramm)$/i,
  mm: /\s*mm$/i,
  money: /^(?:[€£$]|eur|gbp|usd|chf)\s*|\s*(?:[€£$]|eur|gbp|usd|chf)$/gi,
};
/**
 * At most two places after the sign, so that `1.250` is never read as one and a quarter by one shop and as twelve
 * hundred and fifty by another: it is refused.
 */
const PLAIN = /^([+\-−]?)(\d{1,6})(?:[.,](\d{1,2}))?$/;

/**
 * A number with decimal comma or decimal point, with or without its unit behind.
 *
 * @example
 * readNumber('8,5', { from: 0, to: 30, unit: 'mm' }) // { value: 8.5 }
 * readNumber('8.5 mm', { from: 0, to: 30, unit: 'mm' }) // { value: 8.5 }
 * readNumber('1.250', { from: 60, to: 1500, unit: 'g' }) // { code: 'stock-not-a-number' }
 * readNumber('85', { from: 0, to: 30, unit: 'mm' }) // { code: 'stock-out-of-range' }
 */
export function readNumber(text: string, { from, to, unit, whole }: NumberLimits): NumberCell {
  const bare = unit ? text.replace(UNITS[unit], '') : text;
  const match = PLAIN.exec(bare);
  if (!match) return { code: 'stock-not-a-number' };
  const [, sign, before, after] = match;
  if (whole && after !== undefined && Number(after) !== 0) return { code: 'stock-not-whole' };
  const size = Number(`${before}.${after ?? 0}`);
  const value = sign === '-' || sign === '−' ? 0 - size : size;
  return value < from || value > to ? { code: 'stock-out-of-range' } : { value };
}
