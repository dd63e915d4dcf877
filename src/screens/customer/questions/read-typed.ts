import type { Quantity } from '../../../flow/answers.ts';
import { plainText, typedNumber } from '../../../units/typed-number.ts';

/** What was wrong with something typed: words are `screen.typed.<code>`. */
export interface TypedFinding {
  readonly code: 'empty' | 'letters' | 'outside' | 'other-unit' | 'rare-at-age';
  readonly data: Readonly<Record<string, string | number>>;
  /** What was probably meant: one tap takes it. */
  readonly meant?: Quantity;
  /** What was typed, where it may well be right: one tap keeps it. */
  readonly keep?: Quantity;
}

/** A length in inches, as typed. */
const INCHES = / ?(in|inch|inches|")\.?$/;
/** By definition since 1959: 1 in is 25.4 mm. */
const MM_PER_INCH = 25.4;

/** Nobody types a size longer than this; what is longer was pasted by mistake. */
const LONGEST = 40;

export interface UnitRange {
  readonly id: string;
  readonly from: number;
  readonly to: number;
}

/**
 * Reads a size or length as people type it into a field whose unit is chosen beside it: `42`, `42,5`, `42 2/3`, `42⅔`.
 *
 * @returns the value in the chosen unit, or what to say: nothing typed, letters, outside the unit's range, or in
 * range for another unit on offer, which is then named
 * @example readTyped('42 2/3', 'eu', [{ id: 'eu', from: 16, to: 52 }]) // { value: 42.667 }
 * @example readTyped('265', 'eu', [{ id: 'eu', from: 16, to: 52 }, { id: 'mm', from: 90, to: 330 }]) // other-unit, mm
 */
export function readTyped(
  typed: string,
  unit: string,
  units: readonly UnitRange[],
): { readonly value: number } | TypedFinding {
  const said = typed.trim().slice(0, LONGEST);
  if (typed.trim().length > LONGEST) return { code: 'letters', data: { typed: `${said}…` } };
  const plain = plainText(typed).toLowerCase().replaceAll('مم', 'mm').replaceAll('سم', 'cm');
  const inches = INCHES.test(plain);
  const named = inches ? 'mm' : (/(mm|cm|eu|uk|us)\.?$|^(eu|uk|us)/.exec(plain)?.[0].slice(0, 2) ?? '');
  const text = plain.replace(INCHES, '').replace(/ ?(mm|cm|eu|uk|us)\.?$|^(eu|uk|us) ?/g, '');
  if (text === '') return { code: 'empty', data: {} };
  const number = typedNumber(text);
  if (number === undefined) return { code: 'letters', data: { typed: said } };
  const value = inches ? Math.round(number * MM_PER_INCH) : Math.round(number * 1000) / 1000;
  const range = units.find(({ id }) => id === unit);
  if (!range || (unit.startsWith(named) && value >= range.from && value <= range.to)) return { value };
  const data = { typed: said, from: range.from, to: range.to };
  const other = units.find(({ id, from, to }) => id !== unit && id.startsWith(named) && value >= from && value <= to);
  if (!other) return { code: 'outside', data };
  return { code: 'other-unit', data: { ...data, other: other.id }, meant: { value, unit: other.id } };
}
