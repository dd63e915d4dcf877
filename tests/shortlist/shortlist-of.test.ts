import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { meets } from '../../src/shortlist/musts.ts';
import { score } from '../../src/shortlist/scored.ts';
import { shortlistOf } from '../../src/shortlist/shortlist-of.ts';
import type { Shoe, Stock } from '../../src/stock/shoe.ts';
import { anyMusts, anyNeeds, anyShoes, box, knowledge, must, need, profile, shoe, stockOf, visit } from './toy.ts';

const lineUpOf = (of: ReturnType<typeof profile>, stock: Stock) => {
  const lineUp = shortlistOf(of, visit, knowledge, stock, 1).lineUps[0];
  if (lineUp === undefined) throw new Error('no line-up');
  return lineUp;
};

const NEEDS = [need('cushion', [3, 4], 0.6), need('drop', [4, 8], 0.4)];

describe('laws', () => {
  test('every pair in a line-up, and every further one, passes every must and is on hand', () => {
    fc.assert(
      fc.property(anyShoes(), anyNeeds, anyMusts, (shoes, needs, musts) => {
        const { entries, more } = lineUpOf(profile(needs, musts), stockOf(shoes));
        for (const { shoe: each, boxes } of [...entries, ...more]) {
          for (const asked of musts) expect(meets(each, asked)).toBe('yes');
          expect(boxes.length).toBeGreaterThan(0);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('nothing but a must shuts a shoe out: without one, every shoe on hand is shown or follows, up to nine', () => {
    fc.assert(
      fc.property(anyShoes(9), anyNeeds, (shoes, needs) => {
        const { entries, more, removed } = lineUpOf(profile(needs), stockOf(shoes));
        expect([...entries, ...more].map(({ shoe: { id } }) => id).sort()).toEqual(shoes.map(({ id }) => id).sort());
        expect(removed).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  test('the shortlist does not hang on the order of the stock list, nor on the order of needs', () => {
    fc.assert(
      fc.property(
        fc
          .tuple(anyShoes(), anyNeeds, anyMusts)
          .chain(([shoes, needs, musts]) =>
            fc.tuple(
              fc.constant({ shoes, needs, musts }),
              fc.shuffledSubarray([...shoes], { minLength: shoes.length }),
              fc.shuffledSubarray([...needs], { minLength: needs.length }),
            ),
          ),
        ([{ shoes, needs, musts }, shuffled, otherNeeds]) => {
          const one = lineUpOf(profile(needs, musts), stockOf(shoes));
          const stock = stockOf(shuffled);
          expect(lineUpOf(profile(needs, musts), { ...stock, boxes: stock.boxes.toReversed() })).toEqual(one);
          const first = lineUpOf(profile(otherNeeds, musts), stockOf(shoes)).entries[0]?.shoe.id;
          expect(first).toBe(one.entries[0]?.shoe.id);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('no pair stands in a line-up twice, places run from 1, and only "show more" goes without parts', () => {
    fc.assert(
      fc.property(anyShoes(), anyNeeds, (shoes, needs) => {
        const { entries, more } = lineUpOf(profile(needs), stockOf(shoes));
        const all = [...entries, ...more];
        expect(new Set(all.map(({ shoe: { id } }) => id)).size).toBe(all.length);
        expect(all.map(({ place }) => place)).toEqual(all.map((_, i) => i + 1));
        expect(entries.length).toBe(Math.min(3, shoes.length));
        for (const { part } of entries) expect(part).not.toBe('');
      }),
      { numRuns: 60 },
    );
  });

  test('looking a stock through takes work in step with its size', () => {
    const reads = (count: number) => {
      let read = 0;
      const shoes = Array.from({ length: count }, (_, i): Shoe => {
        const numbers = { cushion: 1 + (i % 5), drop: i % 13, price: 50 + (i % 97) };
        const watched = new Proxy(numbers, {
          get: (of, key) => {
            read += 1;
            return Reflect.get(of, key);
          },
        });
        return shoe(`s${i}`, watched);
      });
      for (const each of shoes) score(each, NEEDS);
      return read;
    };
    expect(reads(4000)).toBe(4 * reads(1000));
  });
});

describe('a line-up', () => {
  const good = shoe('good', { cushion: 3, drop: 6 });

  test('leaves out what is not on hand in the size, and says so', () => {
    const away = shoe('away', { cushion: 3, drop: 6 });
    const short = shoe('short', { cushion: 3, drop: 6 });
    const stock: Stock = {
      asOf: '2026-11-25T09:12',
      shoes: [good, away, short],
      boxes: [box('good'), box('away', { onHand: 1, reserved: 1 }), box('short', { innerLength: 250 })],
    };
    const { entries, removed } = lineUpOf(profile(NEEDS), stock);
    expect(entries.map(({ shoe: { id } }) => id)).toEqual(['good']);
    expect(removed).toEqual([{ must: 'size', value: true, count: 2, unrecorded: 0 }]);
  });

  test('says the last pair', () => {
    const stock = { ...stockOf([good]), boxes: [box('good', { onHand: 2, reserved: 1 })] };
    expect(lineUpOf(profile(NEEDS), stock).entries[0]).toMatchObject({ lastPair: true });
    expect(lineUpOf(profile(NEEDS), stockOf([good])).entries[0]).toMatchObject({ lastPair: false });
  });

  test('still shows pairs while the foot is not measured, with no box to fetch', () => {
    const unmeasured = {
      ...profile(NEEDS),
      size: { from: 'none', doubt: 0, toeRoom: [10, 15], findings: [] },
    } as const;
    expect(lineUpOf(unmeasured, stockOf([good])).entries[0]).toMatchObject({ boxes: [], lastPair: false });
  });

  test('keeps to the shelf the customer chose', () => {
    const women = shoe('women', good.numbers, { shelf: 'women' });
    const men = shoe('men', good.numbers, { shelf: 'men' });
    const { entries, removed } = lineUpOf(profile(NEEDS, [], { shelf: 'women' }), stockOf([women, men]));
    expect(entries.map(({ shoe: { id } }) => id)).toEqual(['women']);
    expect(removed).toEqual([{ must: 'shelf', value: 'women', count: 1, unrecorded: 0 }]);
  });

  test('with nothing left is empty and says what each single must would give back', () => {
    const { entries, ifDropped, sureness } = lineUpOf(profile(NEEDS, [must('non-marking')]), stockOf([good]));
    expect(entries).toEqual([]);
    expect(sureness).toBe('none');
    expect(ifDropped).toEqual([{ must: 'non-marking', value: true, pairs: 1 }]);
  });

  test('there is one for each part of a split profile, each by its own needs and musts', () => {
    const split = {
      ...profile(NEEDS),
      split: [
        { for: 'indoor', needs: [need('cushion', [1, 2])], musts: [must('non-marking')] },
        { for: 'outdoor', needs: [need('cushion', [4, 5])], musts: [] },
      ],
    };
    const stock = stockOf([
      shoe('hall', { cushion: 1 }, { marks: { 'non-marking': true } }),
      shoe('road', { cushion: 5 }),
    ]);
    const { lineUps } = shortlistOf(split, visit, knowledge, stock, 1);
    expect(lineUps.map((each) => [each.for, each.entries[0]?.shoe.id])).toEqual([
      ['indoor', 'hall'],
      ['outdoor', 'road'],
    ]);
  });

  test.each(['refer', 'fitter-first', 'other-footwear', 'keep-yours'] as const)(
    'there is none when the outcome is %s',
    (outcome) => {
      const found = shortlistOf({ ...profile(NEEDS), outcome }, visit, knowledge, stockOf([good]), 1);
      expect(found).toEqual({ outcome, lineUps: [], cautions: [] });
    },
  );

  test('sold today, the pair is gone and the next one stands first', () => {
    const next = shoe('next', { cushion: 3, drop: 9 });
    const stock = stockOf([good, next]);
    const sold = { ...stock, boxes: stock.boxes.filter(({ shoe: of }) => of !== 'good') };
    expect(lineUpOf(profile(NEEDS), stock).entries[0]?.shoe.id).toBe('good');
    expect(lineUpOf(profile(NEEDS), sold).entries[0]?.shoe.id).toBe('next');
  });
});
