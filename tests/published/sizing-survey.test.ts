import { describe, expect, test } from 'vitest';
import { MEASURE_RANGES } from '../../src/observation/measure-ranges.ts';
import { questionFeet } from '../../src/observation/question-feet.ts';
import { ARCH_NOTED, archDifference, BALL_RATIO } from '../../src/sizing/arch-length.ts';
import { formulaLabels } from '../../src/sizing/formula-labels.ts';
import { GIRTH_LETTERS, girthLetter, japaneseGirth } from '../../src/sizing/systems/japanese.ts';
import { mondopoint } from '../../src/sizing/systems/mondopoint.ts';
import { FOOT_LINES, predicted, widthOf, zOf } from '../../src/sizing/width.ts';

// ANSUR II: Gordon et al. 2014, NATICK/TR-15/007; 4,082 men and 1,986 women. Summary figures worked out from its data.
const LENGTH = { men: { mean: 271.18, sd: 13.1 }, women: { mean: 246.29, sd: 12.44 } } as const;
const PEOPLE = { men: 4082, women: 1986 } as const;

/**
 * How far a printed share may lie from a model's, per cent: three binomial standard errors of the survey's sample, and
 * half of the last printed digit.
 */
const within = (share: number, people: number): number => 3 * Math.sqrt((share * (100 - share)) / people) + 0.05;
/** The share of people below this many standard deviations, per cent. */
const below = (z: number): number => {
  let sum = 0;
  for (let at = -8; at < z; at += 0.001) sum += density(at + 0.0005) * 0.001;
  return 100 * sum;
};

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

describe('foot lengths of the survey, as the curve used here has them', () => {
  // Computed from the survey's data: percentiles in whole millimetres.
  const PERCENTILES = {
    men: { 5: 250, 25: 263, 50: 271, 75: 280, 95: 293 },
    women: { 5: 226, 25: 238, 50: 246, 75: 254, 95: 268 },
  } as const;
  test.each([
    ['men', 5],
    ['men', 25],
    ['men', 50],
    ['men', 75],
    ['men', 95],
    ['women', 5],
    ['women', 25],
    ['women', 50],
    ['women', 75],
    ['women', 95],
  ] as const)('of the %s, %d per cent are no longer than the survey says', (sex, percent) => {
    const { mean, sd } = LENGTH[sex];
    const at = PERCENTILES[sex][percent];
    // A whole millimetre holds half a millimetre to either side, and every share in it is as good.
    const shares = [at - 0.5, at + 0.5].map((foot) => below((foot - mean) / sd));
    const error = within(percent, PEOPLE[sex]);
    expect(shares[0]).toBeLessThanOrEqual(percent + error);
    expect(shares[1]).toBeGreaterThanOrEqual(percent - error);
  });

  // Computed: the shortest and longest feet of the survey, which bound what is asked about on each shelf.
  test('the shortest man and woman of the survey are not questioned on their shelf, and a millimetre less is', () => {
    const codes = (length: number, shelf: 'men' | 'women') =>
      questionFeet({ left: { length }, posture: 'standing', sock: 'worn-sock' }, shelf).map(({ code }) => code);
    expect([codes(216, 'men'), codes(198, 'women')]).toEqual([[], []]);
    expect([codes(215, 'men'), codes(197, 'women')]).toEqual([['short-for-shelf'], ['short-for-shelf']]);
  });

  // Computed: the survey's widest ranges, men and women together.
  test.each([
    ['length', 198, 323],
    ['ballGirth', 186, 306],
    ['width', 77, 126],
    ['heelWidth', 48, 93],
  ] as const)('every %s of the survey, %d to %d mm, can be typed', (measure, least, most) => {
    expect(MEASURE_RANGES[measure][0]).toBeLessThanOrEqual(least);
    expect(MEASURE_RANGES[measure][1]).toBeGreaterThanOrEqual(most);
  });

  // Computed: mean ratios to foot length.
  test.each([
    ['men', 'ball', 0.741],
    ['men', 'girth', 0.93],
    ['men', 'breadth', 0.376],
    ['men', 'heel', 0.268],
    ['women', 'ball', 0.7392],
    ['women', 'girth', 0.927],
    ['women', 'breadth', 0.377],
    ['women', 'heel', 0.273],
  ] as const)('the %s of mean length have a %s of %d of it', (sex, measure, ratio) => {
    const { mean } = LENGTH[sex];
    expect(Math.abs(predicted(sex, measure, mean) / mean - ratio)).toBeLessThan(0.001);
  });
});

describe('how many of the survey each size takes', () => {
  // The survey's single feet are not kept here, so its shares are set against a normal curve of its mean and spread.
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
  ] as const)('%s in size %d: %d per cent', (sex, size, share) => {
    const { mean, sd } = LENGTH[sex];
    // The ends of the size, by the function itself.
    const feet = Array.from({ length: 1601 }, (_, at) => 180 + at / 10).filter(
      (foot) => mondopoint.size(foot) === size,
    );
    const [from = 0, to = 0] = [feet[0], feet.at(-1)];
    const expected = below((to + 0.05 - mean) / sd) - below((from - 0.05 - mean) / sd);
    expect(Math.abs(expected - share)).toBeLessThanOrEqual(within(expected, PEOPLE[sex]));
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
      const expected = 100 * (found.get(letter) ?? 0);
      expect(Math.abs(expected - share), letter).toBeLessThanOrEqual(within(expected, PEOPLE[sex]));
    }
  });

  // Computed: "E is average" holds for the people the standard was made from, and not for this sample.
  test.each([
    ['men', -3.7],
    ['women', -9.7],
  ] as const)('the mean girth of the %s lies %d mm from an E', (sex, off) => {
    const { mean } = LENGTH[sex];
    expect(predicted(sex, 'girth', mean) - japaneseGirth(mean, 'E', sex)).toBeCloseTo(off, 1);
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

  // Computed: how often a ball length suggests a foot half a UK size (4.23 mm) or a whole one longer than it is.
  test.each([
    ['men', 4.23, 20.8],
    ['men', 8.47, 5.2],
    ['women', 4.23, 16.1],
    ['women', 8.47, 2.9],
  ] as const)('of the %s, by at least %d mm: %d per cent', (sex, over, share) => {
    const { mean } = LENGTH[sex];
    const ratio = predicted(sex, 'ball', mean) / mean;
    let expected = 0;
    for (let z = -5; z < 5; z += 0.01) {
      const length = mean + z * LENGTH[sex].sd;
      // The ball length from which on this foot is told that it is longer, and how many have it.
      const ball = ratio * (length + over);
      expected +=
        density(z) * 0.01 * (100 - below((ball - predicted(sex, 'ball', length)) / FOOT_LINES[sex].ball.spread));
    }
    expect(Math.abs(expected - share)).toBeLessThanOrEqual(within(expected, PEOPLE[sex]));
    expect(archDifference(mean, ratio * (mean + over), ratio)).toBeCloseTo(over, 9);
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
