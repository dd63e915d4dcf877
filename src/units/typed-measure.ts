import { fromMillimetres, LENGTH_UNITS, type LengthUnit, toMillimetres } from './length.ts';
import { fromGrams, MASS_UNITS, type MassUnit, toGrams } from './mass.ts';
import type { Finding, Reading } from './result.ts';
import { plainText, typedNumber } from './typed-number.ts';

export type MeasureUnit = LengthUnit | MassUnit;

/** A typed measure as read: in millimetres or grams, and as it was typed, for echoing back. */
export interface Measure {
  readonly value: number;
  readonly typed: { readonly value: number; readonly unit: MeasureUnit };
}

/** What the field is for: the unit taken where none is typed, and the range that makes sense, in millimetres or grams. */
export interface Expected {
  readonly unit: MeasureUnit;
  readonly from: number;
  readonly to: number;
}

/** How units are typed, in any of the kiosk's languages. Case does not matter; a full stop after the unit is let pass. */
const SPELLINGS: readonly (readonly [MeasureUnit, RegExp])[] = [
  ['mm', /^(?:mm|millim[eè]t(?:re|er)s?|mil[ií]metros?|مم|ملم|مل?ليمتر(?:ات)?)$/],
  ['cm', /^(?:cm|centim[eè]t(?:re|er)s?|cent[ií]metros?|zentimeter|سم|سنت[يى]متر(?:ات)?)$/],
  ['in', /^(?:"|in|inch|inches|zoll|po|pouces?|pulgadas?|بوص(?:ة|ات)|إنش)$/],
  ['g', /^(?:g|gr|grams?|gramm|grammes?|gramos?|غ|جم|[غج]رام(?:ات)?)$/],
  ['oz', /^(?:oz|ounces?|unzen?|onces?|onzas?|[أا]ونصة)$/],
];
/** Nobody types a measure longer than this; what is longer was pasted by mistake. */
const LONGEST = 40;

/**
 * Reads a typed length or mass.
 *
 * Nothing is guessed: a number outside the range comes back without a value, with the unit that would make sense of
 * it where there is one (`26` in a field for a foot in millimetres asks whether centimetres were meant), and anything
 * but a number and a unit is refused with the reason. An empty field is no measure and no finding.
 *
 * @example readMeasure('26,5 cm', { unit: 'mm', from: 90, to: 350 }) // value 265
 * @example readMeasure('10 1/2 in', { unit: 'mm', from: 90, to: 350 }) // value 266.7
 * @example readMeasure('26', { unit: 'mm', from: 90, to: 350 }) // finding measure-other-unit, guess 26 cm
 */
export function readMeasure(text: string, expected: Expected): Reading<Measure> {
  if (text.length > LONGEST) return refuse('measure-unclear', `${text.slice(0, LONGEST)}…`);
  const plain = plainText(text);
  if (plain === '') return { findings: [] };
  const parts = /^([\d.,/ ]*?) ?([^\d.,/ ][^\d]*?)?\.?$/.exec(plain);
  const digits = parts?.[1] ?? '';
  const suffix = parts?.[2]?.toLowerCase();
  if (/^[-\u2212]\d/.test(plain)) return refuse('measure-negative', plain);
  if (parts === null || (suffix !== undefined && digits === '')) {
    return refuse(/\p{L}/u.test(plain) ? 'measure-letters' : 'measure-unclear', plain);
  }
  const unit = suffix === undefined ? expected.unit : SPELLINGS.find(([, spelling]) => spelling.test(suffix))?.[0];
  if (unit === undefined) return refuse('measure-letters', plain);
  if (isLength(unit) !== isLength(expected.unit)) return refuse('measure-wrong-kind', plain, { unit: expected.unit });
  const number = typedNumber(digits);
  if (number === undefined) return refuse('measure-unclear', plain);
  return inRange(number, unit, expected, plain);
}

function inRange(number: number, unit: MeasureUnit, expected: Expected, plain: string): Reading<Measure> {
  const value = toBase(number, unit);
  if (value >= expected.from && value <= expected.to)
    return { value: { value, typed: { value: number, unit } }, findings: [] };
  const guess = otherUnit(number, unit, expected);
  if (guess !== undefined) {
    return refuse('measure-other-unit', plain, { number, unit, guess: guess.value, guessUnit: guess.unit });
  }
  const from = fromBase(expected.from, unit);
  const to = fromBase(expected.to, unit);
  return refuse('measure-out-of-range', plain, { number, unit, from: oneDecimal(from), to: oneDecimal(to) });
}

/**
 * The measure that was probably meant: the same digits in another unit, or with the decimal sign left out.
 * Of two that would do, the one nearer the middle of the range. Undefined when none would fall in it.
 *
 * @example otherUnit(26, 'mm', { from: 90, to: 350 }) // { value: 26, unit: 'cm' }
 * @example otherUnit(2600, 'mm', { from: 90, to: 350 }) // { value: 260, unit: 'mm' }
 */
export function otherUnit(
  number: number,
  unit: MeasureUnit,
  expected: Pick<Expected, 'from' | 'to'>,
): { readonly value: number; readonly unit: MeasureUnit } | undefined {
  const fits = (value: number, as: MeasureUnit) =>
    toBase(value, as) >= expected.from && toBase(value, as) <= expected.to;
  const units: readonly MeasureUnit[] = isLength(unit) ? LENGTH_UNITS : MASS_UNITS;
  const middle = (expected.from + expected.to) / 2;
  const [sameDigits] = units
    .filter((other) => other !== unit && fits(number, other))
    .toSorted((a, b) => Math.abs(toBase(number, a) - middle) - Math.abs(toBase(number, b) - middle));
  if (sameDigits !== undefined) return { value: number, unit: sameDigits };
  const noPoint = number / 10;
  return fits(noPoint, unit) ? { value: noPoint, unit } : undefined;
}

function isLength(unit: MeasureUnit): unit is LengthUnit {
  return (LENGTH_UNITS as readonly string[]).includes(unit);
}
function toBase(value: number, unit: MeasureUnit): number {
  return isLength(unit) ? toMillimetres(value, unit) : toGrams(value, unit);
}
function fromBase(value: number, unit: MeasureUnit): number {
  return isLength(unit) ? fromMillimetres(value, unit) : fromGrams(value, unit);
}
function oneDecimal(value: number): number {
  return Math.round(value * 10) / 10;
}
function refuse(code: string, value: string, data?: Finding['data']): Reading<never> {
  return { findings: [{ code, severity: 'error', value, ...(data === undefined ? {} : { data }) }] };
}
