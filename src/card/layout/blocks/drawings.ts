import type { Mark } from '../mark.ts';

/** A hand held up: the card's one sign for "stop". Outline in a box 9 wide and 12 high. */
const HAND: readonly (readonly [number, number])[] = [
  [2.5, 12],
  [1.2, 8.8],
  [0.2, 6.4],
  [1.1, 5.7],
  [2.4, 7.4],
  [2.4, 2.2],
  [3.7, 2.2],
  [3.8, 5.8],
  [4.1, 5.8],
  [4.1, 0.6],
  [5.4, 0.6],
  [5.5, 5.8],
  [5.8, 5.8],
  [5.8, 1.3],
  [7.1, 1.3],
  [7.1, 6.2],
  [7.5, 6.2],
  [7.5, 3],
  [8.8, 3],
  [8.8, 8.8],
  [7.8, 12],
];

export const hand = (x: number, y: number, height: number): Mark => ({
  kind: 'shape',
  points: HAND.map(([px, py]) => [x + (px * height) / 12, y + (py * height) / 12] as const),
  closed: true,
  fill: 'ink',
});
export const handWidth = (height: number): number => (height * 9) / 12;

/** A tick, drawn, since few fonts hold one. */
export const tick = (x: number, y: number, size: number): Mark => ({
  kind: 'shape',
  points: [
    [x, y + size * 0.55],
    [x + size * 0.36, y + size * 0.9],
    [x + size, y + size * 0.12],
  ],
  closed: false,
  stroke: 'ink',
  weight: 0.55,
});

/** A box to tick by hand. */
export const tickBox = (x: number, y: number, size: number): Mark => ({
  kind: 'box',
  x,
  y,
  width: size,
  height: size,
  stroke: 'ink',
  weight: 0.35,
  fill: 'paper',
});

/**
 * Right foot from above, toes up: points round the outline, in shares of the length. Drawn by eye; the measured
 * lengths are written beside it and nothing is read off the drawing.
 */
const FOOT: readonly (readonly [number, number])[] = [
  [0.0, 1.0],
  [0.09, 0.985],
  [0.125, 0.9],
  [0.115, 0.78],
  [0.13, 0.6],
  [0.165, 0.42],
  [0.185, 0.3],
  [0.17, 0.19],
  [0.13, 0.11],
  [0.07, 0.055],
  [0.0, 0.025],
  [-0.07, 0.0],
  [-0.135, 0.02],
  [-0.165, 0.09],
  [-0.185, 0.2],
  [-0.19, 0.29],
  [-0.155, 0.42],
  [-0.11, 0.55],
  [-0.1, 0.7],
  [-0.12, 0.84],
  [-0.095, 0.96],
];

/** A foot outline, `length` high, centred on `x`, toes at `y`. */
export function foot(side: 'left' | 'right', x: number, y: number, length: number): Mark {
  const mirror = side === 'left' ? -1 : 1;
  return {
    kind: 'shape',
    points: smooth(FOOT).map(([px, py]) => [x + mirror * px * length, y + py * length] as const),
    closed: true,
    stroke: 'ink',
    weight: 0.45,
  };
}

/** A closed Catmull-Rom curve through the points, four steps to each. */
function smooth(points: typeof FOOT): typeof FOOT {
  const at = (index: number) => points[(index + points.length) % points.length] ?? ([0, 0] as const);
  return points.flatMap((_, i) => {
    const [p0, p1, p2, p3] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
    return [0, 0.25, 0.5, 0.75].map(
      (t) => [spline(t, p0[0], p1[0], p2[0], p3[0]), spline(t, p0[1], p1[1], p2[1], p3[1])] as const,
    );
  });
}

const spline = (t: number, a: number, b: number, c: number, d: number): number =>
  0.5 * (2 * b + (c - a) * t + (2 * a - 5 * b + 4 * c - d) * t * t + (3 * b - a - 3 * c + d) * t * t * t);
