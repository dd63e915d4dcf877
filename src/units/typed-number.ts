const VULGAR: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};
/** Code points of zero in the Arabic-Indic and extended Arabic-Indic digits, which some keyboards type. */
const ZEROS = [0x0660, 0x06f0];

/**
 * Typed text in one plain form: ASCII digits, `1/2` for `½`, single spaces, no invisible characters.
 *
 * @example plainText(' 10½″ ') // '10 1/2"'
 */
export function plainText(text: string): string {
  return (
    text
      .replace(/[½⅓⅔¼¾⅛⅜⅝⅞]/g, (sign) => ` ${VULGAR[sign]}`)
      // A raised or circled digit is another number than one more digit: 10² is not 102.
      .replace(/[²³¹\u2070-\u209f\u2460-\u24ff]/g, '?')
      .normalize('NFKC')
      .replace(/[\u0660-\u0669\u06f0-\u06f9]/g, (digit) => {
        const code = digit.charCodeAt(0);
        return String(code - (ZEROS.findLast((zero) => code >= zero) ?? code));
      })
      .replace(/[\u061c\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]/g, '')
      // The Arabic decimal sign, and the Arabic comma, which more keyboards have.
      .replace(/[\u066b\u060c]/g, '.')
      .replaceAll('\u2044', '/')
      .replace(/[\u2033\u201c\u201d]|\u2032\u2032|''/g, '"')
      .replace(/\s+/g, ' ')
      .trim()
  );
}

/**
 * A number as people write it: `265`, `26.5`, `26,5`, `10 1/2`, `1/2`. Undefined for anything else.
 *
 * One separator is a decimal sign, comma or point; two or more (`1.265,5`) are refused, as they read both ways.
 * Expects `plainText`.
 *
 * @example typedNumber('26,5') // 26.5
 * @example typedNumber('10 1/2') // 10.5
 */
export function typedNumber(text: string): number | undefined {
  if (/^\d{1,9}(?:[.,]\d{1,9})?$/.test(text)) return Number(text.replace(',', '.'));
  const mixed = /^(?:(\d{1,6}) )?(\d{1,3})\/(\d{1,3})$/.exec(text);
  if (mixed === null) return undefined;
  const top = Number(mixed[2]);
  const bottom = Number(mixed[3]);
  if (bottom === 0 || (mixed[1] !== undefined && top >= bottom)) return undefined;
  const whole = Number(mixed[1] ?? 0);
  return (whole * bottom + top) / bottom;
}
