/**
 * The Minimalist Index: how little a running or walking shoe gets in the foot's way, 0 (most shoe) to 100 (least).
 *
 * Esculier et al. 2015 (J Foot Ankle Res 8:42), agreed by 42 experts: five parts of 0 to 5 points, a fifth each. The
 * paper's end points were read in three accounts of it; the bands between are from memory and equal even steps.
 * For the fitter only: it describes a shoe and foretells no injury.
 */
export interface MinimalistFigures {
  /** Grams, one shoe. */
  readonly mass: number;
  /** Millimetres at the heel's centre. */
  readonly heelStack: number;
  /** Millimetres. */
  readonly drop: number;
  /** How many of six kinds of stability and motion-control devices it has. */
  readonly devices: number;
  /** Bending lengthwise, 0 (stiff) to 2.5 (folds up). */
  readonly bend: number;
  /** Twisting, 0 (stiff) to 2.5 (wrings out). */
  readonly twist: number;
}

/** Where a point is lost, from 5 down to 0: at this figure and above. */
const LOSES_A_POINT_AT = {
  mass: [125, 175, 225, 275, 325],
  heelStack: [8, 14, 20, 26, 32],
  drop: [1, 4, 7, 10, 13],
  devices: [1, 2, 3, 4, 5],
} as const;

type Banded = keyof typeof LOSES_A_POINT_AT;

/** Points of one part, 0 to 5. */
function pointsOf(part: Banded, value: number): number {
  return 5 - LOSES_A_POINT_AT[part].filter((from) => value >= from).length;
}

/**
 * The whole index.
 *
 * @example
 * minimalistIndex({ mass: 240, heelStack: 24, drop: 6, devices: 1, bend: 1.5, twist: 1.5 }) // 56
 */
export function minimalistIndex(shoe: MinimalistFigures): number {
  return pointsKnown(shoe).reduce((sum, [, points]) => sum + points, 0) * 4;
}

/**
 * How many index points the second shoe stands above the first, over the parts known for both. A part not known for
 * both counts as no change, so the rise is never overstated. Absent unless mass, stack and drop are known for both.
 *
 * @example
 * minimalistRise({ mass: 300, heelStack: 32, drop: 10 }, { mass: 150, heelStack: 10, drop: 0 }) // 44
 */
export function minimalistRise(from: Partial<MinimalistFigures>, to: Partial<MinimalistFigures>): number | undefined {
  const before = new Map(pointsKnown(from));
  const after = new Map(pointsKnown(to));
  for (const part of ['mass', 'heelStack', 'drop'] as const)
    if (!before.has(part) || !after.has(part)) return undefined;
  let rise = 0;
  for (const [part, points] of after) {
    const was = before.get(part);
    if (was !== undefined) rise += points - was;
  }
  return rise * 4;
}

type Part = Banded | 'flex';

function pointsKnown(shoe: Partial<MinimalistFigures>): [Part, number][] {
  const points: [Part, number][] = [];
  for (const part of Object.keys(LOSES_A_POINT_AT) as Banded[]) {
    const value = shoe[part];
    if (value !== undefined) points.push([part, pointsOf(part, value)]);
  }
  if (shoe.bend !== undefined && shoe.twist !== undefined) points.push(['flex', shoe.bend + shoe.twist]);
  return points;
}
