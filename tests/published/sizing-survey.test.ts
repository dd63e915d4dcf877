import { describe, expect, test } from 'vitest';
import { ARCH_NOTED, archDifference, BALL_RATIO } from '../../src/sizing/arch-length.ts';
import { formulaLabels } from '../../src/sizing/formula-labels.ts';
import { GIRTH_LETTERS, girthLetter } from '../../src/sizing/systems/japanese.ts';
import { mondopoint } from '../../src/sizing/systems/mondopoint.ts';
import { FOOT_LINES, predicted, widthOf, zOf } from '../../src/sizing/width.ts';

// ANSUR II: Gordon et al. 2014, NATICK/TR-15/007; 4,082 men and 1,986 women. Summary figures worked out from its data.
const LENGTH = { men: { mean: 271.18, sd: 13.1 }, women: { mean: 246.29, sd: 12.44 } } as const;

describe('width against the ANSUR II regressions', () => {
  test.each([
    ['men', 270, 255, 251.3, 0.36],
    ['men', 270, 270, 251.3, 1.8],
    ['men', 280, 240, 257.2, -1.66],
    ['women', 245, 230, 227.4, 0.28],
    ['women', 245, 212, 227.4, -1.64],
    ['women', 260, 250, 236.0, 1.5],
  ] as const)('%s of %d mm with a girth of %d mm', (sex, length, girth, expected, z) => {
    expect(predicted(sex, 'girth', length)).toBeCloseTo(expected, 1);
    expect(zOf(sex, 'girth', length, girth)).toBeCloseTo(z, 2);
    expect(widthOf(length, { girth }, sex)?.z).toBeCloseTo(z, 2);
  });

  // A regression passes through the means.
  test.each([
    ['men', 252.02, 101.86, 72.51, 200.94],
    ['women', 228.11, 92.71, 67.16, 182.05],
  ] as const)('the lines of %s pass through the survey means', (sex, girth, breadth, heel, ball) => {
    const at = LENGTH[sex].mean;
    expect(predicted(sex, 'girth', at)).toBeCloseTo(girth, 1);
    expect(Math.abs(predicted(sex, 'breadth', at) - breadth)).toBeLessThan(0.06);
    expect(Math.abs(predicted(sex, 'heel', at) - heel)).toBeLessThan(0.06);
    expect(Math.abs(predicted(sex, 'ball', at) - ball)).toBeLessThan(0.06);
  });

  // p5, p50 and p95 of girth, breadth and heel in 10 mm bands of length. The band's middle is taken to be its name, and
  // 1.645 SD about the line should land near its ends. The outermost bands hold fewer than 100 feet, most of them
  // nearer the middle of the survey than the band's own middle, so they may stray further.
  const SMALL = { men: 240, women: 220 };
  type Spread = readonly [p5: number, p50: number, p95: number];
  type Band = [length: number, girth: Spread, breadth: Spread, heel: Spread];
  const bands: Record<'men' | 'women', Band[]> = {
    men: [
      [240, [220, 236, 253], [90, 95, 103], [60, 67, 77]],
      [250, [226, 240, 255], [92, 97, 103], [62, 68, 76]],
      [260, [228, 245, 263], [92, 99, 106], [63, 70, 78]],
      [270, [234, 251, 269], [95, 101, 109], [65, 72, 80]],
      [280, [239, 256, 274], [97, 103, 110], [66, 74, 82]],
      [290, [246, 262, 282], [99, 106, 114], [68, 76, 86]],
      [300, [250, 268, 288], [101, 109, 117], [68, 78, 88]],
    ],
    women: [
      [220, [204, 214, 228], [83, 87, 97], [58, 62, 68]],
      [230, [203, 218, 235], [83, 89, 95], [57, 63, 70]],
      [240, [211, 224, 240], [85, 91, 98], [59, 66, 74]],
      [250, [216, 230, 247], [87, 93, 100], [61, 67, 76]],
      [260, [219, 234, 252], [89, 95, 102], [62, 70, 78]],
      [270, [227, 240, 260], [92, 98, 105], [65, 72, 80]],
    ],
  };
  for (const sex of ['men', 'women'] as const) {
    test.each(bands[sex])(`the band of ${sex} at %d mm`, (length, girth, breadth, heel) => {
      for (const [measure, seen] of [
        ['girth', girth],
        ['breadth', breadth],
        ['heel', heel],
      ] as const) {
        const { spread } = FOOT_LINES[sex][measure];
        const middle = predicted(sex, measure, length);
        const line = [middle - 1.645 * spread, middle, middle + 1.645 * spread];
        seen.forEach((value, at) => {
          const allowed = (at === 1 ? 2 : 5) + (length === SMALL[sex] ? 2 : 0);
          expect(Math.abs(value - (line[at] ?? Number.NaN))).toBeLessThanOrEqual(allowed);
        });
      }
    });
  }
});

describe('the sizes that the survey’s 5th, 50th and 95th percentile feet get (computed from the formulas)', () => {
  test.each([
    [250, '250', '39.5', '6.5', '7.5', '8.5'],
    [271, '270', '42.5', '9', '10', '11'],
    [293, '295', '46', '11.5', '12.5', '13.5'],
  ])('a man’s foot of %d mm', (foot, mark, eu, uk, usMen, usWomen) => {
    expect(formulaLabels(foot)).toEqual({ mondopoint: mark, eu, uk, usMen, usWomen });
  });
  test.each([
    [226, '225', '36', '3.5', '4.5', '5.5'],
    [246, '245', '39', '6', '7', '8'],
    [268, '270', '42', '8.5', '9.5', '10.5'],
  ])('a woman’s foot of %d mm', (foot, mark, eu, uk, usMen, usWomen) => {
    expect(formulaLabels(foot)).toEqual({ mondopoint: mark, eu, uk, usMen, usWomen });
  });
});

describe('how many of the survey each size takes', () => {
  // The survey's single feet are not kept here, so its shares are set against a normal curve of its mean and spread:
  // whole-millimetre data in 5 mm bins strays from the curve by up to about 2 points.
  test.each([
    ['men', 255, 8.1],
    ['men', 260, 9.3],
    ['men', 265, 14.3],
    ['men', 270, 14.7],
    ['men', 275, 15.2],
    ['men', 280, 11.8],
    ['men', 285, 8.9],
    ['men', 290, 5.0],
    ['women', 230, 6.2],
    ['women', 235, 12.1],
    ['women', 240, 13.7],
    ['women', 245, 16.5],
    ['women', 250, 14.5],
    ['women', 255, 12.8],
    ['women', 260, 7.6],
    ['women', 265, 5.2],
  ] as const)('%s in size %d: %d %%', (sex, size, share) => {
    let sum = 0;
    for (let foot = 200; foot <= 330; foot += 0.05) {
      if (mondopoint.size(foot) === size) sum += density((foot - LENGTH[sex].mean) / LENGTH[sex].sd);
    }
    expect(Math.abs((100 * sum * 0.05) / LENGTH[sex].sd - share)).toBeLessThan(2.5);
  });

  // Shares of girth letters in the same sample, against the same curve with the regression's spread.
  test.each([
    ['men', { A: 2.8, B: 8.1, C: 16.8, D: 23.4, E: 21.0, EE: 14.6, EEE: 7.6, EEEE: 3.1 }],
    ['women', { A: 8.0, B: 17.4, C: 24.4, D: 22.9, E: 14.8, EE: 7.3, EEE: 2.4 }],
  ] as const)('girth letters of the %s', (sex, shares) => {
    const found = new Map(GIRTH_LETTERS.map((letter) => [letter as string, 0]));
    for (let z = -4; z <= 4; z += 0.05) {
      const length = Math.round(LENGTH[sex].mean + z * LENGTH[sex].sd);
      for (let e = -4; e <= 4; e += 0.05) {
        const girth = Math.round(predicted(sex, 'girth', length) + e * FOOT_LINES[sex].girth.spread);
        const letter = girthLetter(mondopoint.size(length) ?? 0, girth, sex);
        if (letter !== undefined) found.set(letter, (found.get(letter) ?? 0) + density(z) * density(e) * 0.0025);
      }
    }
    for (const [letter, share] of Object.entries(shares)) {
      expect(Math.abs(100 * (found.get(letter) ?? 0) - share), letter).toBeLessThan(2);
    }
  });
});

describe('heel to ball', () => {
  // ANSUR II mean ratios; the scan of 21 Japanese runners (Fukano and Iso 2016) uses other landmarks.
  test('the ratio lies between the survey’s men and women, and above the runners’ scan', () => {
    expect(BALL_RATIO).toBeGreaterThanOrEqual(0.739);
    expect(BALL_RATIO).toBeLessThanOrEqual(0.741);
    expect(183.6 / 253.6).toBeCloseTo(0.724, 3);
    expect(160.2 / 253.6).toBeCloseTo(0.632, 3);
  });

  // Computed with the ratio 0.74; noted from half a UK size, 4.2 mm.
  test.each([
    [270, 200, 270.3, 0.3, false],
    [270, 206, 278.4, 8.4, true],
    [270, 192, 259.5, -10.5, false],
    [245, 181, 244.6, -0.4, false],
    [245, 185, 250.0, 5.0, true],
    [260, 195, 263.5, 3.5, false],
  ])('a foot of %d mm with its ball at %d mm', (foot, ball, implied, difference, noted) => {
    expect(foot + archDifference(foot, ball)).toBeCloseTo(implied, 1);
    expect(archDifference(foot, ball)).toBeCloseTo(difference, 1);
    expect(archDifference(foot, ball) >= ARCH_NOTED).toBe(noted);
  });
});

function density(z: number): number {
  return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
}
