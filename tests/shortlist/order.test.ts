import fc from 'fast-check';
import { expect, test } from 'vitest';
import { byOrder } from '../../src/shortlist/order.ts';
import { anyNeeds, anyShoes, need, scored, shoe } from './toy.ts';

const ids = (shoes: Parameters<typeof scored>[0], needs: Parameters<typeof scored>[1]) =>
  scored(shoes, needs)
    .toSorted(byOrder)
    .map(({ shoe: { id } }) => id);

test('the order does not hang on the order of the stock list', () => {
  fc.assert(
    fc.property(
      anyShoes().chain((shoes) =>
        fc.tuple(fc.constant(shoes), fc.shuffledSubarray([...shoes], { minLength: shoes.length })),
      ),
      anyNeeds,
      ([shoes, shuffled], needs) => {
        expect(ids(shuffled, needs)).toEqual(ids(shoes, needs));
      },
    ),
    { numRuns: 100 },
  );
});

test('the order is total: no two pairs tie, and before is never before in a circle', () => {
  fc.assert(
    fc.property(anyShoes(7), anyNeeds, (shoes, needs) => {
      const all = scored(shoes, needs);
      for (const a of all)
        for (const b of all) {
          expect(byOrder(a, b) === 0).toBe(a === b);
          expect(Math.sign(byOrder(a, b)) + Math.sign(byOrder(b, a))).toBe(0);
          for (const c of all) if (byOrder(a, b) < 0 && byOrder(b, c) < 0) expect(byOrder(a, c)).toBeLessThan(0);
        }
    }),
    { numRuns: 50 },
  );
});

test('of equally close pairs the better known comes first, then the cheaper, then by id', () => {
  const needs = [need('drop', [4, 8]), need('cushion', [3, 4])];
  const known = { drop: 6, cushion: 3 };
  expect(
    ids(
      [
        shoe('d', { ...known }),
        shoe('c', { ...known, price: 90 }),
        shoe('b', { ...known, price: 80 }),
        shoe('a', { ...known, price: 90 }),
      ],
      needs,
    ),
  ).toEqual(['b', 'a', 'c', 'd']);
  // 10 mm of drop is worth a half, as much as a drop nobody noted.
  expect(ids([shoe('a', { cushion: 3 }), shoe('b', { cushion: 3, drop: 10 })], needs)).toEqual(['b', 'a']);
});

test('a difference below a thousandth does not decide', () => {
  const needs = [need('drop', [4, 8], 0.001), need('cushion', [3, 4], 1)];
  expect(ids([shoe('b', { drop: 6, cushion: 3 }), shoe('a', { drop: 8.5, cushion: 3 })], needs)).toEqual(['a', 'b']);
});
