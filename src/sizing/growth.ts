/** How a child's foot grows, and when to look again. */
export interface Growth {
  /** Millimetres a month. */
  readonly perMonth: number;
  /** Months until the least and the most of the wanted room would be down to the floor. */
  readonly months: readonly [number, number];
  /** Months until feet should be measured again. */
  readonly nextCheck: number;
}

/** Least space in front of a child's toes, and what a new pair should have, millimetres (Kinz et al. 2015: minimum 10, optimum 12; a new pair up to 17). */
export const CHILD_FLOOR = 10;
export const CHILD_ROOM: readonly [number, number] = [12, 17];

/** Feet up to this length are taken to be under three: 156 mm boys and 153 mm girls at three (Cheng, in Children 2022;9:750). */
const LENGTH_AT_THREE = 153;

/**
 * Growth of a child's foot, millimetres a month.
 *
 * Under six: 1.5 up to age three and 1 from three to six; six to ten: 0.8 (the Austrian children's-feet researchers,
 * as reported; Gould 1990 found more, 25 mm a year, before the first steps). Eleven and over: 0.6, the mean over boyhood
 * and girlhood (6.8 and 5.8 mm a year, Cheng, as reviewed in Children 2022;9:750): some have stopped, some are in a spurt.
 * Under six, a foot shorter than most have at three counts as younger. No answer for adults.
 *
 * @example growthPerMonth('under-6', 165) // 1
 * @example growthPerMonth('6-to-10', 200) // 0.8
 */
export function growthPerMonth(ageBand: string | undefined, foot?: number): number | undefined {
  if (ageBand === 'under-6') return foot !== undefined && foot < LENGTH_AT_THREE ? 1.5 : 1;
  if (ageBand === '6-to-10') return 0.8;
  return ageBand === '11-to-17' ? 0.6 : undefined;
}

/**
 * Whole months until a gap is down to the floor. Zero when it already is.
 *
 * @example monthsOfRoom(17, 1) // 7
 * @example monthsOfRoom(15, 0.8) // 6
 */
export function monthsOfRoom(gap: number, perMonth: number, floor: number = CHILD_FLOOR): number {
  return Math.max(0, Math.floor((gap - floor) / perMonth + 1e-9));
}

/** Longest wait between looks, months: 3 to 4 at ages three to six (as reported with Kinz 2015); later 6 (common practice). */
const LONGEST_WAIT: Readonly<Record<string, number>> = { 'under-6': 3, '6-to-10': 4, '11-to-17': 6 };

/**
 * Months until to measure again, with this space in front of the toes now: when the room runs out, or sooner by age.
 *
 * @example nextCheck(15, 'under-6', 165) // 3
 * @example nextCheck(11, '6-to-10', 200) // 1
 */
export function nextCheck(gap: number, ageBand: string | undefined, foot?: number): number | undefined {
  const perMonth = growthPerMonth(ageBand, foot);
  if (perMonth === undefined) return undefined;
  return Math.min(monthsOfRoom(gap, perMonth), LONGEST_WAIT[ageBand ?? ''] ?? 6);
}

/**
 * Growth for a child of this age in a pair with the wanted room. No answer for adults or an age not given.
 *
 * @example growthOf([12, 17], 'under-6', 165) // { perMonth: 1, months: [2, 7], nextCheck: 3 }
 */
export function growthOf(
  room: readonly [number, number],
  ageBand: string | undefined,
  foot?: number,
): Growth | undefined {
  const perMonth = growthPerMonth(ageBand, foot);
  const wait = nextCheck((room[0] + room[1]) / 2, ageBand, foot);
  if (perMonth === undefined || wait === undefined) return undefined;
  return { perMonth, months: [monthsOfRoom(room[0], perMonth), monthsOfRoom(room[1], perMonth)], nextCheck: wait };
}
