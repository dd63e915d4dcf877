import type { Shoe } from './shoe.ts';

/** Stated drops err by 1 to 3 mm (from memory); beyond 2 one of the three figures is taken for a slip. */
export const DROP_TOLERANCE = 2;

/** What is wrong with a model's figures taken together: the column to look at, the value and what the others say. */
export interface ShoeFault {
  readonly code: 'stock-drop-off' | 'stock-drop-above-stack';
  readonly column: string;
  readonly value: string;
  readonly data: Readonly<Record<string, number>>;
}

/**
 * Checks the drop against the stack heights, in millimetres. No answer when nothing is wrong or too little is known.
 *
 * @example
 * checkShoe({ 'heel-stack': 30, 'forefoot-stack': 24, drop: 10 })?.code // 'stock-drop-off'
 * checkShoe({ 'heel-stack': 30, 'forefoot-stack': 24, drop: 8 }) // undefined: within 2 mm
 * checkShoe({ 'heel-stack': 8, drop: 12 })?.code // 'stock-drop-above-stack'
 */
export function checkShoe(numbers: Shoe['numbers']): ShoeFault | undefined {
  const { 'heel-stack': heel, 'forefoot-stack': forefoot, drop } = numbers;
  if (drop === undefined || heel === undefined) return undefined;
  if (drop > heel) {
    return { code: 'stock-drop-above-stack', column: 'drop (mm)', value: String(drop), data: { heel } };
  }
  if (forefoot === undefined) return undefined;
  const difference = Math.round((heel - forefoot) * 100) / 100;
  return Math.abs(drop - difference) > DROP_TOLERANCE
    ? { code: 'stock-drop-off', column: 'drop (mm)', value: String(drop), data: { heel, forefoot, difference } }
    : undefined;
}
