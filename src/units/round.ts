/** Guards ties against binary dust: far below a thousandth of a millimetre, far above the dust. */
const DUST = 1e-9;

/**
 * The nearest multiple of a step, ties up.
 *
 * Ties go up because a shoe half a step too long can be worn and one half a step too short cannot.
 *
 * @example nearest(34.25, 0.5) // 34.5
 * @example nearest(262.5, 5) // 265
 */
export function nearest(value: number, step: number): number {
  return Math.floor(value / step + 0.5 + DUST) * step;
}
