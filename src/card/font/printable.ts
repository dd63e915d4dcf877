import type { Measure } from './metrics.ts';

/** Stands for a character the font lacks. It is in the font itself and used for nothing else on a card. */
export const MISSING_MARK = '◊';

/** Where a word may be parted; never printed itself. */
export const SOFT_HYPHEN = '\u00ad';

/** Characters that mean the same as one in the font. */
const SAME: Readonly<Record<string, string>> = {
  '\u2011': '-',
  '\u2010': '-',
  // Between the thousands of a French number.
  '\u202f': '\u00a0',
  '\u2212': '−',
  '\t': ' ',
  '\n': ' ',
  '\r': ' ',
};

/**
 * Text with every character the font lacks replaced by a visible mark, and which those were.
 *
 * What a reader sees as one character (an emoji with its skin tone) is replaced by one mark.
 *
 * @example
 * printable('Fern & Fell 👟', measure) // { text: 'Fern & Fell ◊', missing: ['👟'] }
 */
export function printable(
  text: string,
  measure: Measure,
): { readonly text: string; readonly missing: readonly string[] } {
  const missing: string[] = [];
  let out = '';
  for (const { segment } of new Intl.Segmenter('en', { granularity: 'grapheme' }).segment(text.normalize('NFC'))) {
    const same = SAME[segment] ?? segment;
    if (same === SOFT_HYPHEN || [...same].every((char) => measure.has(char.codePointAt(0) ?? 0))) out += same;
    else {
      missing.push(segment);
      out += MISSING_MARK;
    }
  }
  return { text: out, missing };
}

/** The same for every text in a tree of plain data; each missing character is listed once. */
export function printableAll<T>(tree: T, measure: Measure): { readonly tree: T; readonly missing: readonly string[] } {
  const missing = new Set<string>();
  const walk = (value: unknown): unknown => {
    if (typeof value === 'string') {
      const read = printable(value, measure);
      for (const char of read.missing) missing.add(char);
      return read.text;
    }
    if (Array.isArray(value)) return value.map(walk);
    if (value !== null && typeof value === 'object') {
      return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, walk(each)]));
    }
    return value;
  };
  return { tree: walk(tree) as T, missing: [...missing] };
}
