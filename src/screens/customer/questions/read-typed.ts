/** What was wrong with something typed: words are `screen.typed.<code>`. */
export interface TypedFinding {
  readonly code: 'empty' | 'letters' | 'outside' | 'other-unit';
  readonly data: Readonly<Record<string, string | number>>;
}

interface UnitRange {
  readonly id: string;
  readonly from: number;
  readonly to: number;
}

const THIRDS: Readonly<Record<string, number>> = { '⅓': 1 / 3, '⅔': 2 / 3, '½': 0.5, '¼': 0.25, '¾': 0.75 };

/**
 * Reads a size or length as people type it: `42`, `42,5`, `42.5`, `42 2/3`, `42⅔`, `265 mm`.
 *
 * @returns the value in the chosen unit, or what to say: nothing typed, letters, outside the unit's range, or in
 * range for another unit on offer (which is then named)
 * @example readTyped('42 2/3', 'eu', units) // { value: 42.667 }
 */
export function readTyped(
  typed: string,
  unit: string,
  units: readonly UnitRange[],
): { readonly value: number } | TypedFinding {
  const text = typed.trim().toLowerCase().replace(new RegExp(`\\s*(mm|cm|eu|uk|us)\\.?$`), '');
  if (text === '') return { code: 'empty', data: {} };
  const value = numberIn(text);
  if (value === undefined) return { code: 'letters', data: { typed: typed.trim() } };
  const range = units.find(({ id }) => id === unit);
  if (!range || (value >= range.from && value <= range.to)) return { value };
  const other = units.find(({ id, from, to }) => id !== unit && value >= from && value <= to);
  const data = { typed: typed.trim(), from: range.from, to: range.to };
  return other ? { code: 'other-unit', data: { ...data, other: other.id } } : { code: 'outside', data };
}

function numberIn(text: string): number | undefined {
  const found = /^(\d{1,4})(?:[.,](\d{1,3}))?\s*(?:([⅓⅔½¼¾])|([1-3])\s*\/\s*([2-4]))?$/.exec(text);
  if (!found) return undefined;
  const [, whole, decimals, glyph, above, below] = found;
  const fraction = glyph ? (THIRDS[glyph] ?? 0) : above ? Number(above) / Number(below) : 0;
  if (decimals && fraction) return undefined;
  return Math.round((Number(`${whole}.${decimals ?? 0}`) + fraction) * 1000) / 1000;
}
