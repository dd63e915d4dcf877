import { describe, expect, test } from 'vitest';
import { desirability, lessIsBetter, moreIsBetter, overall, targetIsBest } from '../../src/shortlist/desirability.ts';

// Derringer & Suich 1980, J. Quality Technology 12(4), 214–219: the tyre tread of p. 218. Its responses are rounded,
// hence the tolerance of 0.002.
const TREAD = [
  { name: 'PICO abrasion', value: 129.5, wish: moreIsBetter(120, 170), published: 0.189 },
  { name: '200 % modulus', value: 1300, wish: moreIsBetter(1000, 1300), published: 1 },
  { name: 'elongation at break', value: 465.7, wish: targetIsBest(400, 500, 600), published: 0.656 },
  { name: 'hardness', value: 68, wish: targetIsBest(60, 67.5, 75), published: 0.932 },
];

describe('desirability agrees with the tyre tread of Derringer & Suich 1980', () => {
  test.each(TREAD)('$name', ({ value, wish, published }) => {
    expect(Math.abs(desirability(value, wish) - published)).toBeLessThan(0.002);
  });

  test('overall, 0.583', () => {
    const parts = TREAD.map(({ value, wish }) => desirability(value, wish));
    expect(Math.abs(overall(parts, [1, 1, 1, 1]) - 0.583)).toBeLessThan(0.002);
    // From the paper's own printed parts, to its last digit.
    expect(overall([0.189, 1, 0.656, 0.932], [1, 1, 1, 1])).toBeCloseTo(0.583, 3);
  });

  test('weighted twice as much on the last two, 0.6429594 (computed by hand from the same parts)', () => {
    expect(overall([0.189, 1, 0.656, 0.932], [1, 1, 2, 2])).toBeCloseTo(0.6429594, 6);
  });
});

// NIST/SEMATECH e-Handbook of Statistical Methods, 5.5.3.2.2. The page's own d1 (0.34) and d3 (0.49) do not follow
// exactly from its rounded responses, so the overall desirability is what is held to, within 0.001.
describe('desirability agrees with the NIST/SEMATECH e-Handbook, 5.5.3.2.2', () => {
  const at = (x1: number, x2: number, x3: number) => {
    const y1 =
      139.12 +
      16.49 * x1 +
      17.88 * x2 +
      2.21 * x3 -
      4.01 * x1 ** 2 -
      3.45 * x2 ** 2 -
      1.57 * x3 ** 2 +
      5.12 * x1 * x2 -
      7.88 * x1 * x3 -
      7.13 * x2 * x3;
    const y2 =
      1261.13 +
      268.15 * x1 +
      246.5 * x2 -
      102.6 * x3 -
      83.57 * x1 ** 2 -
      124.92 * x2 ** 2 +
      199.2 * x3 ** 2 +
      69.37 * x1 * x2 -
      104.38 * x1 * x3 -
      94.13 * x2 * x3;
    const y3 = 417.5 - 99.67 * x1 - 31.4 * x2 - 27.42 * x3;
    const y4 =
      68.91 -
      1.41 * x1 +
      4.32 * x2 +
      0.21 * x3 +
      1.56 * x1 ** 2 +
      0.058 * x2 ** 2 -
      0.32 * x3 ** 2 -
      1.62 * x1 * x2 +
      0.25 * x1 * x3 -
      0.12 * x2 * x3;
    return [y1, y2, y3, y4];
  };
  const ofResponses = (y: number[]) =>
    overall(
      y.map((value, i) => desirability(value, (TREAD[i] as (typeof TREAD)[number]).wish)),
      [1, 1, 1, 1],
    );

  test('from its fitted models at the printed settings', () => {
    expect(Math.abs(ofResponses(at(-0.1, 0.15, -1)) - 0.596)).toBeLessThan(0.001);
  });

  test('from its printed responses', () => {
    expect(Math.abs(ofResponses([136.4, 1571.05, 450.56, 69.26]) - 0.596)).toBeLessThan(0.001);
  });

  test('from its printed parts', () => {
    expect(Math.abs(overall([0.34, 1, 0.49, 0.76], [1, 1, 1, 1]) - 0.596)).toBeLessThan(0.001);
  });

  test('no settings nearby do better than its optimum, by more than rounding', () => {
    let best = 0;
    for (let a = -20; a <= 20; a += 1)
      for (let b = -20; b <= 20; b += 1)
        for (let c = -20; c <= 20; c += 1) best = Math.max(best, ofResponses(at(a / 20, b / 20, c / 20)));
    expect(Math.abs(best - 0.596)).toBeLessThan(0.001);
  });
});

// R package `desirability` 2.1, vignette (Kuhn; data of Myers & Montgomery). The vignette prints `0 0` for the overall
// figure of the centre point because it passes a vector where the package reads columns; the true figure is held to.
describe('desirability agrees with the R package desirability 2.1', () => {
  const conversion = moreIsBetter(80, 97);
  const activity = targetIsBest(55, 57.5, 60);

  test('its parts', () => {
    expect(desirability(81.09, conversion)).toBeCloseTo(0.06411765, 8);
    expect(desirability(59.85, activity)).toBeCloseTo(0.06, 10);
  });

  test('its optima, from the rounded responses it prints', () => {
    expect(overall([desirability(95.1, conversion), desirability(57.5, activity)], [1, 1])).toBeCloseTo(0.9425, 3);
    expect(overall([desirability(92.52, conversion), desirability(57.5, activity)], [1, 1])).toBeCloseTo(0.8581, 3);
  });

  test('the centre point', () => {
    expect(overall([0.06411765, 0.06], [1, 1])).toBeCloseTo(0.06202466, 8);
  });
});

// R package `desirability2` 0.2.0, unit-test vectors over 0, 0.1, … 1, printed to four places.
describe('desirability agrees with the R package desirability2 0.2.0', () => {
  const up = [0, 0, 0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1, 1];
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: the published figure, as printed
  const upHalf = [0, 0, 0.3536, 0.5, 0.6124, 0.7071, 0.7906, 0.866, 0.9354, 1, 1];
  const upCubed = [0, 0, 0.002, 0.0156, 0.0527, 0.125, 0.2441, 0.4219, 0.6699, 1, 1];
  test.each([
    { name: 'more', wish: moreIsBetter(0.1, 0.9), vector: up },
    { name: 'more, exponent 1/2', wish: moreIsBetter(0.1, 0.9, 1 / 2), vector: upHalf },
    { name: 'more, exponent 3', wish: moreIsBetter(0.1, 0.9, 3), vector: upCubed },
    { name: 'less', wish: lessIsBetter(0.1, 0.9), vector: up.toReversed() },
    { name: 'less, exponent 1/2', wish: lessIsBetter(0.1, 0.9, 1 / 2), vector: upHalf.toReversed() },
    { name: 'less, exponent 3', wish: lessIsBetter(0.1, 0.9, 3), vector: upCubed.toReversed() },
    {
      name: 'target',
      wish: targetIsBest(0.1, 0.3, 0.9),
      vector: [0, 0, 0.5, 1, 0.8333, 0.6667, 0.5, 0.3333, 0.1667, 0, 0],
    },
    {
      name: 'target, exponents 1/2 and 3',
      wish: targetIsBest(0.1, 0.3, 0.9, 1 / 2, 3),
      // biome-ignore lint/suspicious/noApproximativeNumericConstant: the published figure, as printed
      vector: [0, 0, 0.7071, 1, 0.5787, 0.2963, 0.125, 0.037, 0.0046, 0, 0],
    },
  ])('$name', ({ wish, vector }) => {
    vector.forEach((published, i) => {
      expect(Math.abs(desirability(i / 10, wish) - published)).toBeLessThan(0.00006);
    });
  });

  // Its steps are multiples of 0.1, the seventh of which is a hair above 0.7: hence outside.
  test('box: a flat top without limbs', () => {
    const box = { ideal: [0.2, 0.7], limits: [0.2, 0.7] } as const;
    const found = Array.from({ length: 11 }, (_, i) => desirability(i * 0.1, box));
    expect(found).toEqual([0, 0, 1, 1, 1, 1, 1, 0, 0, 0, 0]);
    expect(desirability(0.7, box)).toBe(1);
  });
});
