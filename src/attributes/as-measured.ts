import type { AttributeKey } from './attributes.ts';
import { attribute } from './table.ts';

/** Millimetres; above this a half is below what a rule shows. Our choice. */
const SMALL = 50;

/**
 * The ends of a range as finely as a hand can measure them: 5 g, half a millimetre, a whole one above 50 mm (our
 * choice). Steps are not rounded: they are said in words.
 *
 * @example asMeasured('mass', [277.4, 386.7]) // [275, 385]
 */
export function asMeasured(key: AttributeKey, [from, to]: readonly [number, number]): readonly [number, number] {
  const { unit } = attribute(key);
  if (unit === 'step') return [from, to];
  const grain = unit === 'g' ? 5 : unit === 'mm' && to < SMALL ? 0.5 : 1;
  const round = (value: number): number => Math.round(value / grain) * grain;
  return [round(from), round(to)];
}
