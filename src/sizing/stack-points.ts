/** Where a sole's thickness is taken, shares of the inner length from the heel (World Athletics shoe rules, read second-hand). */
export const HEEL_POINT = 0.12;
export const FOREFOOT_POINT = 0.75;

/**
 * How far from the heel, inside the shoe, heel stack and forefoot stack are measured, millimetres.
 *
 * @example stackPoints(280) // { heel: 33.6, forefoot: 210 }
 */
export function stackPoints(innerLength: number): { readonly heel: number; readonly forefoot: number } {
  return { heel: HEEL_POINT * innerLength, forefoot: FOREFOOT_POINT * innerLength };
}
