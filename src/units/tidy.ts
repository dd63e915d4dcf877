/**
 * A number without the binary dust that arithmetic on decimals leaves (`10.1 * 25.4` is 256.53999999999996).
 *
 * Nine decimals of a millimetre are far below anything measured, so nothing real is lost.
 *
 * @example tidy(10.1 * 25.4) // 256.54
 */
export function tidy(value: number): number {
  return Number(value.toFixed(9));
}
