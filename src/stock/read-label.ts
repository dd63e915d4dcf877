import type { LabelSystem } from './shoe.ts';

/** Labels outside these are slips of the pen. Wider than any size run: from infants to the largest made (from memory). */
export const LABEL_LIMITS: Readonly<Record<LabelSystem, readonly [number, number]>> = {
  eu: [14, 56],
  uk: [0, 20],
  'us-men': [0, 22],
  'us-women': [0, 23],
  'uk-child': [0, 14],
  'us-child': [0, 14],
  mondopoint: [80, 350],
  cm: [8, 35],
};

const SIZE = /^(\d{1,2}(?:[.,]\d{1,2})?)(?: ?(?:[½⅓⅔]|1\/2|1\/3|2\/3))?(?: ?[A-Z]{1,4})?$/i;
const MONDOPOINT = /^(\d{2,3}(?:[.,]5)?)(?:[/-]\d{2,3})?$/;

/**
 * A size label as printed on the box, kept as it stands. No answer for what cannot be one, such as the date that a
 * spreadsheet makes of `8/2`.
 *
 * @example
 * readLabel('eu', '42  2/3') // '42 2/3'
 * readLabel('mondopoint', '270/103') // '270/103'
 * readLabel('eu', '08. Feb') // undefined
 * readLabel('eu', '270') // undefined
 */
export function readLabel(system: LabelSystem, text: string): string | undefined {
  const label = text.replace(/\s+/g, ' ');
  const size = Number((system === 'mondopoint' ? MONDOPOINT : SIZE).exec(label)?.[1]?.replace(',', '.') ?? Number.NaN);
  const [from, to] = LABEL_LIMITS[system];
  return size >= from && size <= to ? label : undefined;
}
