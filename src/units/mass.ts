import { tidy } from './tidy.ts';

export const MASS_UNITS = ['g', 'oz'] as const;
export type MassUnit = (typeof MASS_UNITS)[number];

/** Grams in one of each unit. The ounce is 28.349523125 g exactly (a sixteenth of the pound agreed in 1959). */
export const GRAMS_IN: Readonly<Record<MassUnit, number>> = { g: 1, oz: 28.349523125 };

/**
 * A mass in grams.
 *
 * @example toGrams(10, 'oz') // 283.49523125
 */
export function toGrams(value: number, unit: MassUnit): number {
  return tidy(value * GRAMS_IN[unit]);
}

/**
 * Grams in another unit.
 *
 * @example fromGrams(283.49523125, 'oz') // 10
 */
export function fromGrams(grams: number, unit: MassUnit): number {
  return tidy(grams / GRAMS_IN[unit]);
}
