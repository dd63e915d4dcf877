import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Preference } from '../../src/profile/profile.ts';
import { misgivingsFor } from '../../src/shortlist/misgivings.ts';
import { byOrder } from '../../src/shortlist/order.ts';
import { preferred } from '../../src/shortlist/preferred.ts';
import { reasonsFor } from '../../src/shortlist/reasons.ts';
import { score } from '../../src/shortlist/scored.ts';
import { shortlistOf } from '../../src/shortlist/shortlist-of.ts';
import type { Shoe } from '../../src/stock/shoe.ts';
import { anyNeeds, anyShoes, knowledge, need, profile, reason, shoe, stockOf, visit } from './toy.ts';

const HEALTH = new Set(['body', 'conditions']);
const running: Preference = {
  kind: 'use',
  code: 'made-for',
  importance: 0.667,
  parts: [{ uses: ['road', 'trail'], share: 1 }],
  reasons: [reason('activity')],
};
const dry: Preference = {
  kind: 'wish',
  code: 'wish-dry-or-drain',
  importance: 0.2,
  anyOf: [
    { attribute: 'waterproof', value: true },
    { attribute: 'quick-drying', value: true },
  ],
  reasons: [reason('wet')],
};
const fastened: Preference = {
  kind: 'wish',
  code: 'wish-fastened',
  importance: 0.2,
  anyOf: [{ attribute: 'closure-not', value: 'pull-on' }],
  safety: true,
  reasons: [reason('conditions')],
};
const sold = (id: string, ...use: readonly string[]): Shoe => shoe(id, { cushion: 3 }, { use });
const NEEDS = [need('cushion', [3, 4], 0.6)];
const misgivings = (of: Shoe, preferences: readonly Preference[]) =>
  misgivingsFor(score(of, NEEDS, preferences), NEEDS, { facts: {} }, false, HEALTH, preferences);

describe('a shoe sold for what the customer does', () => {
  test('comes before one sold for something else, all else alike, and that one says so', () => {
    const shoes = [sold('a', 'walking'), sold('b', 'trail'), sold('c', 'road')];
    const order = shoes.map((each) => score(each, NEEDS, [running])).toSorted(byOrder);
    expect(order.map((each) => each.shoe.id)).toEqual(['c', 'b', 'a']);
    expect(misgivings(sold('a', 'walking'), [running])).toEqual([{ code: 'made-for-walking', from: 'activity' }]);
    expect(misgivings(sold('b', 'trail'), [running])).toEqual([]);
    expect(misgivings(sold('d', 'bowling'), [running])).toEqual([{ code: 'made-for-other', from: 'activity' }]);
  });

  test('sold for something else besides, it is worth a little less', () => {
    expect(preferred(sold('a', 'road', 'walking'), running)).toBe(0.85);
    expect(preferred(sold('a', 'road'), running)).toBe(1);
  });

  test('what nobody wrote down neither helps nor is held against a pair aloud', () => {
    expect(preferred(sold('a'), running)).toBe(0.5);
    expect(misgivings(sold('a'), [running])).toEqual([]);
  });

  test('the best and second best are worth it by the shares of two activities', () => {
    const two: Preference = {
      ...running,
      parts: [
        { uses: ['road'], share: 0.75 },
        { uses: ['gym'], share: 0.25 },
      ],
    };
    expect(preferred(sold('a', 'road'), two)).toBe(0.75 + 0.25 * 0.25);
    expect(misgivings(sold('a', 'gym'), [two])).toEqual([]);
  });
});

describe('a wish', () => {
  test('is met by any one of what is wished, and said', () => {
    const drains = shoe('a', { cushion: 3 }, { marks: { waterproof: false, 'quick-drying': true } });
    const soaks = shoe('b', { cushion: 3 }, { marks: { waterproof: false, 'quick-drying': false } });
    const unknown = shoe('c', { cushion: 3 }, { marks: { waterproof: false } });
    expect([drains, unknown, soaks].map((each) => preferred(each, dry))).toEqual([1, 0.5, 0.3]);
    expect(reasonsFor(score(drains, NEEDS, [dry]), NEEDS, HEALTH, [dry])).toContainEqual({
      code: 'wish-dry-or-drain',
      from: 'wet',
    });
    expect(misgivings(soaks, [dry])).toEqual([{ code: 'wish-dry-or-drain', from: 'wet' }]);
    expect(misgivings(unknown, [dry])).toEqual([]);
  });

  test('that bears on staying upright is said before all else, and as a health matter where it is one', () => {
    const slipper = shoe('a', { cushion: 1 }, { lists: { closure: ['pull-on'] } });
    expect(misgivings(slipper, [fastened])[0]).toEqual({ code: 'wish-fastened', from: 'conditions', health: true });
  });
});

describe('whatever is preferred', () => {
  test('shuts nothing out, and moves a pair no further than its importance', () => {
    const preferences = [running, dry, fastened];
    fc.assert(
      fc.property(anyShoes(8), anyNeeds, (shoes, needs) => {
        const with_ = shortlistOf({ ...profile(needs), preferences }, visit, knowledge, stockOf(shoes), 1).lineUps[0];
        const without = shortlistOf(profile(needs), visit, knowledge, stockOf(shoes), 1).lineUps[0];
        const count = (line: typeof with_) => (line?.entries.length ?? 0) + (line?.more.length ?? 0);
        expect(count(with_)).toBe(count(without));
        const mine = preferences.reduce((sum, { importance }) => sum + importance, 0);
        const whole = needs.reduce((sum, { importance }) => sum + importance, 0) + mine;
        for (const each of shoes) {
          const plain = score(each, needs).desirability;
          // 0.25 is the least any preference is worth; rounding to thousandths on top.
          const least = plain ** ((whole - mine) / whole) * 0.25 ** (mine / whole);
          expect(score(each, needs, preferences).desirability).toBeGreaterThanOrEqual(least - 0.002);
        }
      }),
      { numRuns: 60 },
    );
  });
});
