import { expect, test } from 'vitest';
import { nextPick } from '../../src/shortlist/mmr.ts';

// A worked table of maximal marginal relevance (Carbonell & Goldstein 1998), computed by hand for four things.
const RELEVANCE = [0.9, 0.88, 0.7, 0.5];
const LIKENESS = [
  [1, 0.95, 0.3, 0.1],
  [0.95, 1, 0.35, 0.15],
  [0.3, 0.35, 1, 0.2],
  [0.1, 0.15, 0.2, 1],
];

test.each([
  { lambda: 1, order: 'ABCD', worth: [0.9, 0.88, 0.7, 0.5] },
  { lambda: 0.7, order: 'ACBD', worth: [0.63, 0.4, 0.331, 0.29] },
  { lambda: 0.5, order: 'ACDB', worth: [0.45, 0.2, 0.15, -0.035] },
  { lambda: 0.3, order: 'ADCB', worth: [0.27, 0.08, 0, -0.401] },
])('maximal marginal relevance picks $order with lambda $lambda', ({ lambda, order, worth }) => {
  const picked: number[] = [];
  const marginals: number[] = [];
  for (;;) {
    const pick = nextPick(
      [0, 1, 2, 3],
      picked,
      (i) => RELEVANCE[i] as number,
      (i, j) => LIKENESS[i]?.[j] as number,
      lambda,
    );
    if (pick === undefined) break;
    picked.push(pick.index);
    marginals.push(pick.marginal);
  }
  expect(picked.map((i) => 'ABCD'[i]).join('')).toBe(order);
  marginals.forEach((value, i) => {
    expect(value).toBeCloseTo(worth[i] as number, 10);
  });
});
