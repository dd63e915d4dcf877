import type { FootMeasure } from './observation.ts';

/**
 * What a foot's measures can be, millimetres, from a toddler to the longest adult.
 *
 * Adults' ends lie outside the smallest and largest of 6,068 soldiers (ANSUR II: length 198 to 323, ball girth 186 to
 * 306, breadth 77 to 126, heel 48 to 93); the low ends are lowered for children (common practice). `instep` is the
 * tape's girth over the instep.
 */
export const MEASURE_RANGES: Readonly<Record<FootMeasure, readonly [number, number]>> = {
  length: [80, 350],
  ballLength: [55, 265],
  ballGirth: [80, 350],
  width: [30, 145],
  heelWidth: [20, 110],
  instep: [80, 350],
};

/** Longest and shortest insole or inner length taken from an old pair, millimetres (common practice). */
export const INSOLE_RANGE = [90, 380] as const;
/** Most a toe print can lie short of the insole's end, millimetres; over it something was misread (common practice). */
export const TOE_PRINT_GAP_RANGE = [0, 60] as const;
