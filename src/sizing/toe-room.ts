import { CHILD_FLOOR, CHILD_ROOM } from './growth.ts';

/** Adults' space in front of the longest toe, millimetres: from the published 10 to 20 and 9.5 to 12.7, standing. */
export const ADULT_ROOM: readonly [number, number] = [10, 15];
/** Least that is let pass for an adult who has no reason for a closer fit (same sources). */
const ADULT_FLOOR = 10;
/** Ages at which feet still grow, as the flow names them. */
export const CHILD_BANDS: readonly string[] = ['under-6', '6-to-10', '11-to-17'];

/** Space wanted in front of the toes, and the least let pass, millimetres. */
export interface ToeRoom {
  readonly room: readonly [number, number];
  readonly least: number;
}

/**
 * Toe room by activity and age, millimetres.
 *
 * An activity may ask adults for less (lifting, close court, pedals) or more (downhill). Children never get less than
 * their own: 12 to 17, floor 10.
 *
 * @example toeRoom(undefined, '18-to-64', 'men') // { room: [10, 15], least: 10 }
 * @example toeRoom([6, 10], '6-to-10', 'junior') // { room: [12, 17], least: 10 }
 */
export function toeRoom(
  activity: readonly [number, number] | undefined,
  ageBand: string | undefined,
  shelf: string | undefined,
): ToeRoom {
  const [low, high] = activity ?? ADULT_ROOM;
  if (isChild(ageBand, shelf)) {
    return { room: [Math.max(low, CHILD_ROOM[0]), Math.max(high, CHILD_ROOM[1])], least: CHILD_FLOOR };
  }
  return { room: [low, high], least: Math.min(ADULT_FLOOR, low) };
}

/** A child by age; by the junior shelf only where the age was not given. */
export function isChild(ageBand: string | undefined, shelf: string | undefined): boolean {
  if (ageBand !== undefined && ageBand !== 'rather-not-say') return CHILD_BANDS.includes(ageBand);
  return shelf === 'junior';
}
