import { describe, expect, test } from 'vitest';
import { rankAcceptability, setsFor } from '../../src/shortlist/rank-acceptability.ts';
import { variedImportances } from '../../src/shortlist/varied-importances.ts';

// Stochastic multicriteria acceptability analysis (Lahdelma & Salminen 2001). Both cases can be worked out exactly by
// integrating over the simplex of importances, so no other program's draws come into it.
const SETS = setsFor(0.005);
/** One row for each thing. */
const acceptabilities = (parts: readonly (readonly number[])[], importances: Float64Array) =>
  parts.map((_, i) => rankAcceptability(parts, importances, i));

const TOLERANCE = 0.01; // twice the stated error: a fixed seed, so either always inside or never

describe('rank acceptability agrees with exact integrals', () => {
  test('two needs, A = (1, 0), B = (0, 1), C = (0.6, 0.6), any importances', () => {
    const found = acceptabilities(
      [
        [1, 0],
        [0, 1],
        [0.6, 0.6],
      ],
      variedImportances([1, 1], SETS, 7),
    );
    const exact = [
      [0.4, 0.1, 0.5],
      [0.4, 0.1, 0.5],
      [0.2, 0.8, 0],
    ];
    found.forEach((row, i) => {
      row.forEach((share, r) => {
        expect(Math.abs(share - (exact[i]?.[r] as number))).toBeLessThan(TOLERANCE);
      });
    });
  });

  test('three needs, each met by one thing alone: every place a third of the time', () => {
    const found = acceptabilities(
      [
        [1, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ],
      variedImportances([1, 1, 1], SETS, 11),
    );
    for (const share of found.flat()) expect(Math.abs(share - 1 / 3)).toBeLessThan(TOLERANCE);
  });

  test('every thing takes some place, and without ties every place is taken once', () => {
    const found = acceptabilities(
      [
        [0.2, 0.9],
        [0.5, 0.5],
        [0.9, 0.1],
      ],
      variedImportances([1, 1], 500, 3),
    );
    for (const row of found) expect(row.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
    for (let r = 0; r < 3; r += 1) expect(found.reduce((sum, row) => sum + (row[r] as number), 0)).toBeCloseTo(1, 12);
  });
});

// A Dirichlet with concentrations a has means a / sum(a) and variances m (1 − m) / (sum(a) + 1): standard results.
test('importances drawn around stated ones have the mean and spread of a Dirichlet distribution', () => {
  const concentrations = [0.4, 2, 5.6];
  const total = 8;
  const drawn = variedImportances(concentrations, 40_000, 5);
  concentrations.forEach((a, j) => {
    const column = Array.from({ length: 40_000 }, (_, k) => drawn[k * 3 + j] as number);
    const mean = column.reduce((x, y) => x + y, 0) / column.length;
    const variance = column.reduce((x, y) => x + (y - mean) ** 2, 0) / column.length;
    const wanted = a / total;
    expect(Math.abs(mean - wanted)).toBeLessThan(0.005);
    expect(Math.abs(variance - (wanted * (1 - wanted)) / (total + 1))).toBeLessThan(0.002);
  });
});

// Normal approximation, worst case one half, 95 %: the sizes printed for errors of 3, 2, 1 and 0.5 points.
test.each([
  [0.03, 1068],
  [0.02, 2401],
  [0.01, 9604],
  [0.005, 38416],
])('a share within %d of the truth takes %d sets', (error, sets) => {
  expect(setsFor(error)).toBe(sets);
});
