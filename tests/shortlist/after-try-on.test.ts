import { expect, test } from 'vitest';
import { afterTryOn } from '../../src/shortlist/after-try-on.ts';
import type { TryOn } from '../../src/visit/visit.ts';

const tryOn = (shoe: string, more: Partial<TryOn> = {}): TryOn => ({
  shoe,
  box: `${shoe}-box`,
  notes: {},
  rubs: [],
  ...more,
});

test('afterTryOn: the documented example', () => {
  expect(afterTryOn(['a', 'b'], [tryOn('a', { rank: 2, comfort: 70 }), tryOn('b', { rank: 1, comfort: 62 })])).toEqual({
    order: ['b', 'a'],
    aboutTheSame: [['b', 'a']],
  });
});

test('the customer’s ranking is the order, even against their own numbers', () => {
  const { order } = afterTryOn(
    ['a', 'b'],
    [tryOn('a', { rank: 2, comfort: 90 }), tryOn('b', { rank: 1, comfort: 20 })],
  );
  expect(order).toEqual(['b', 'a']);
});

test('pairs not ranked follow as they stood; numbers alone move nothing', () => {
  const { order } = afterTryOn(['a', 'b', 'c'], [tryOn('c', { rank: 1 }), tryOn('b', { comfort: 99 })]);
  expect(order).toEqual(['c', 'a', 'b']);
});

test('a pair pulled in and tried is in the order too, and the later of two records counts', () => {
  const { order } = afterTryOn(['a'], [tryOn('x', { rank: 2 }), tryOn('a', { rank: 3 }), tryOn('a', { rank: 1 })]);
  expect(order).toEqual(['a', 'x']);
});
