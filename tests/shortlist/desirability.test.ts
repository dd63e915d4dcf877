import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { desirability, FLOOR, floored, moreIsBetter, overall } from '../../src/shortlist/desirability.ts';
import { score } from '../../src/shortlist/scored.ts';
import { substitute } from '../../src/shortlist/substitute.ts';
import { anyNeeds, anyShoes, need, shoe } from './toy.ts';

describe('the documented examples', () => {
  test('desirability', () => {
    expect(desirability(129.5, moreIsBetter(120, 170))).toBeCloseTo(0.19, 12);
  });
  test('overall', () => {
    expect(overall([0.189, 1, 0.656, 0.932], [1, 1, 1, 1])).toBeCloseTo(0.583, 3);
  });
  test('score', () => {
    const needs = [{ attribute: 'drop', ideal: [4, 8], limits: [0, 12], importance: 1, reasons: [] }] as const;
    expect([6, 10, 14].map((drop) => score(shoe('a', { drop }), needs).desirability)).toEqual([1, 0.5, 0.05]);
  });
});

test('no desirability is 0: nothing but a must shuts a shoe out', () => {
  fc.assert(
    fc.property(anyShoes(4), anyNeeds, (shoes, needs) => {
      for (const each of shoes) {
        const { parts, desirability: whole } = score(each, needs);
        for (const part of parts) expect(part).toBeGreaterThanOrEqual(FLOOR);
        expect(whole).toBeGreaterThan(0);
        expect(whole).toBeLessThanOrEqual(1);
      }
    }),
    { numRuns: 100 },
  );
});

test('a figure further from the ideal is never worth more', () => {
  const wish = { ideal: [4, 8], limits: [0, 12] } as const;
  fc.assert(
    fc.property(fc.double({ min: 0, max: 30, noNaN: true }), fc.double({ min: 0, max: 30, noNaN: true }), (a, b) => {
      const [near, far] = a < b ? [a, b] : [b, a];
      expect(floored(8 + far, wish)).toBeLessThanOrEqual(floored(8 + near, wish));
      expect(floored(4 - far, wish)).toBeLessThanOrEqual(floored(4 - near, wish));
    }),
  );
});

test('a weight neither very light nor heavy can be wished for', () => {
  const needs = [need('mass', [250, 300])];
  const worth = (mass: number) => score(shoe('a', { mass }), needs).desirability;
  expect(worth(270)).toBe(1);
  expect(worth(200)).toBeLessThan(1);
  expect(worth(340)).toBeLessThan(1);
});

test('a missing figure takes the mean over its scale and is named; a known good one beats it, a known bad one does not', () => {
  const needs = [need('cushion', [4, 5])];
  const unknown = score(shoe('a'), needs);
  expect(unknown).toMatchObject({ desirability: 0.52, unknown: ['cushion'] });
  expect(score(shoe('b', { cushion: 4 }), needs).desirability).toBeGreaterThan(unknown.desirability);
  expect(score(shoe('c', { cushion: 1 }), needs).desirability).toBeLessThan(unknown.desirability);
});

test('a missing figure costs little where most shoes would do, and much where few would', () => {
  const easy = need('toe-box-depth', [2, 3]);
  const picky = { ...need('midfoot-hold', [4.5, 5]), limits: [4, 5.5] as const };
  expect(substitute(easy)).toBeGreaterThan(0.7);
  expect(substitute(picky)).toBeLessThan(0.3);
});

test('the mean over five words is that of their five desirabilities', () => {
  const cushion = { attribute: 'cushion', ideal: [4, 5], limits: [2, 7], importance: 0.5, reasons: [] } as const;
  expect(substitute(cushion)).toBeCloseTo(0.52, 10);
});

test('a missing figure never beats one that meets the need, nor loses to one that misses it', () => {
  fc.assert(
    fc.property(anyNeeds, (needs) => {
      for (const each of needs) {
        expect(substitute(each)).toBeLessThanOrEqual(1);
        expect(substitute(each)).toBeGreaterThanOrEqual(FLOOR - 1e-12);
      }
    }),
    { numRuns: 100 },
  );
});

test('when one need matters more, the pair that meets it best never falls behind one it stood before', () => {
  fc.assert(
    fc.property(
      anyShoes(6),
      anyNeeds,
      fc.nat(),
      fc.double({ min: 0, max: 2, noNaN: true }),
      (shoes, needs, pick, more) => {
        const j = pick % needs.length;
        const weights = needs.map(({ importance }) => importance);
        const raised = weights.map((weight, i) => (i === j ? weight + more : weight));
        const all = shoes.map((each) => score(each, needs).parts);
        for (const a of all)
          for (const b of all) {
            if ((a[j] as number) < (b[j] as number) || overall(a, weights) < overall(b, weights)) continue;
            expect(overall(a, raised)).toBeGreaterThanOrEqual(overall(b, raised) - 1e-12);
          }
      },
    ),
    { numRuns: 100 },
  );
});
