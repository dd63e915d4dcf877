/** Ball length over foot length: 0.741 men and 0.739 women in ANSUR II; 0.724 in a scan of 21 runners with other landmarks. */
export const BALL_RATIO = 0.74;
/** From this difference on, the fitter is told: half a UK size, 4.2 mm (16 to 21 % of the ANSUR II feet). */
export const ARCH_NOTED = 4.2;
/** Over this, about a whole UK size, the customer is told to look where the shoe bends (3 to 5 % of those feet). */
export const LOOK_WHERE_IT_BENDS = 8;

/**
 * The foot length that a ball length suggests, less the foot's own, millimetres. + is a long arch for the foot.
 *
 * It sizes nothing: that the longer of the two should decide is trade habit, and no trial of it was found.
 *
 * @example archDifference(270, 206) // 8.4
 */
export function archDifference(foot: number, ballLength: number, ratio: number = BALL_RATIO): number {
  return ballLength / ratio - foot;
}
