import { tidy } from './tidy.ts';

export const LENGTH_UNITS = ['mm', 'cm', 'in'] as const;
export type LengthUnit = (typeof LENGTH_UNITS)[number];

/**
 * Millimetres in one of each unit. The inch is 25.4 mm exactly (international yard and pound agreement, 1959).
 */
export const MILLIMETRES_IN: Readonly<Record<LengthUnit, number>> = { mm: 1, cm: 10, in: 25.4 };

/** A third of an inch, 8.4667 mm: one whole UK or US size (encyclopaedia article "Barleycorn (unit)"). */
export const BARLEYCORN = 25.4 / 3;

/** Two thirds of a centimetre, 6.6667 mm: one whole EU size (encyclopaedia article "Paris point"). */
export const PARIS_POINT = 20 / 3;

/**
 * A length in millimetres.
 *
 * @example toMillimetres(10.5, 'in') // 266.7
 */
export function toMillimetres(value: number, unit: LengthUnit): number {
  return tidy(value * MILLIMETRES_IN[unit]);
}

/**
 * Millimetres in another unit.
 *
 * @example fromMillimetres(266.7, 'in') // 10.5
 */
export function fromMillimetres(millimetres: number, unit: LengthUnit): number {
  return tidy(millimetres / MILLIMETRES_IN[unit]);
}
