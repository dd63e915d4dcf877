import { describe, expect, test } from 'vitest';
import type { Need, Preference } from '../../src/profile/profile.ts';
import { likeness } from '../../src/shortlist/likeness.ts';
import { pickLineUp } from '../../src/shortlist/line-up.ts';
import { byOrder } from '../../src/shortlist/order.ts';
import { score } from '../../src/shortlist/scored.ts';
import type { Shoe } from '../../src/stock/shoe.ts';
import { need, scored, shoe } from './toy.ts';

const needs = [need('cushion', [3, 4], 0.6), need('mass', [250, 300], 0.4)];
const first = shoe('a', { cushion: 3, mass: 270 });
const twin = shoe('b', { cushion: 3, mass: 272 });
const close = shoe('c', { cushion: 4, mass: 240 });
const soft = shoe('d', { cushion: 5, mass: 300 });

const pick = (shoes: readonly (typeof first)[], firmerInner = false) =>
  pickLineUp(scored(shoes, needs).toSorted(byOrder), needs, firmerInner).map(({ scored: s, part }) => [
    s.shoe.id,
    part,
  ]);

describe('the three pairs', () => {
  test('the closest, one nearly as close that is not its twin, and one to compare with', () => {
    expect(pick([first, twin, close, soft])).toEqual([
      ['a', 'closest'],
      ['c', 'also-close'],
      ['d', 'softer'],
    ]);
  });

  test('a twin is still shown when there is nothing else', () => {
    expect(pick([first, twin])).toEqual([
      ['a', 'closest'],
      ['b', 'also-close'],
    ]);
  });

  test('with twins only, no contrast is claimed', () => {
    const triplet = shoe('c', { cushion: 3, mass: 268 });
    expect(pick([first, twin, triplet]).map(([, part]) => part)).toEqual(['closest', 'also-close', 'also-close']);
  });

  test('no shoes, no line-up', () => {
    expect(pick([])).toEqual([]);
  });

  test('a contrast that misses nearly every wish is not shown while a fair one is to be had', () => {
    const hopeless = shoe('z', { cushion: 1, mass: 600 });
    expect(pick([first, close, soft, hopeless]).map(([id]) => id)).not.toContain('z');
  });

  test('a pair firmer on the inner side is the third when the profile asks for one, and not otherwise', () => {
    const plain = { ...first, numbers: { ...first.numbers, 'medial-support': 0 } };
    const firmer = shoe('f', { cushion: 5, mass: 270, 'medial-support': 1 });
    const shoes = [plain, close, soft, firmer];
    const asked = [...needs, need('medial-support', [0, 2], 0.02, 'observation')];
    const line = (firmerInner: boolean) =>
      pickLineUp(scored(shoes, asked).toSorted(byOrder), asked, firmerInner).map(({ part }) => part);
    expect(line(true)[2]).toBe('firmer-inner');
    expect(line(false)[2]).not.toBe('firmer-inner');
  });
});

describe('what a contrast may not cost', () => {
  const line = (
    shoes: readonly Shoe[],
    wanted: readonly Need[] = needs,
    preferences: readonly Preference[] = [],
  ): (string | undefined)[] => {
    const inOrder = shoes.map((each) => score(each, wanted, preferences)).toSorted(byOrder);
    return pickLineUp(inOrder, wanted, false, preferences).map(({ scored: { shoe: of } }) => of.id);
  };

  test('a pair made for something else is not shown while enough are made for it', () => {
    const running: Preference = {
      kind: 'use',
      code: 'made-for',
      importance: 0.1,
      parts: [{ uses: ['road'], share: 1 }],
      reasons: [],
    };
    const road = (of: Shoe): Shoe => ({ ...of, use: ['road'] });
    const other = shoe('x', { cushion: 4, mass: 300 });
    expect(line([road(first), road(close), road(soft), other], needs, [running])).toEqual(['a', 'c', 'd']);
    expect(line([road(first), road(close), other], needs, [running])).toEqual(['a', 'c', 'x']);
  });

  test('the tread that the ground demands is not traded away', () => {
    const muddy = [...needs, need('lug-depth', [4, 6], 0.35)];
    const on = (of: Shoe, lugs: number): Shoe => ({ ...of, numbers: { ...of.numbers, 'lug-depth': lugs } });
    // Half of what is asked at 3 mm, by the toy's limits of 2 and 4.
    const smooth = on(shoe('x', { cushion: 4, mass: 300 }), 2.6);
    expect(line([on(first, 5), on(close, 4), on(twin, 5), smooth], muddy)).toEqual(['a', 'c', 'b']);
  });

  test('what bears on staying upright is not traded away', () => {
    const fastened: Preference = {
      kind: 'wish',
      code: 'wish-fastened',
      importance: 0.05,
      anyOf: [{ attribute: 'closure-not', value: 'pull-on' }],
      safety: true,
      reasons: [],
    };
    const with_ = (of: Shoe, closure: string): Shoe => ({ ...of, lists: { closure: [closure] } });
    const slipper = with_(shoe('x', { cushion: 4, mass: 300 }), 'pull-on');
    const shoes = [with_(first, 'laces'), with_(close, 'strap'), with_(soft, 'laces'), slipper];
    expect(line(shoes, needs, [fastened])).not.toContain('x');
  });

  test('of two like contrasts the one that goes the customer’s way is shown', () => {
    const mass: Need = { ...need('mass', [240, 300], 0.5), limits: [150, 390], toward: 'less' };
    const lighter = [need('cushion', [3, 4], 0.5), mass];
    const middle = shoe('m', { cushion: 3, mass: 270 });
    const near = shoe('n', { cushion: 4, mass: 270 });
    const heavy = shoe('h', { cushion: 3, mass: 330 });
    const light = shoe('l', { cushion: 3, mass: 205 });
    const placed = pickLineUp(scored([middle, near, heavy, light], lighter), lighter, false);
    expect(placed[2]?.part).toBe('lighter');
  });

  test('another shelf’s version of a pair is no second pair', () => {
    const women = { ...twin, name: first.name };
    expect(line([first, women, close, soft])).toEqual(['a', 'c', 'd']);
  });
});

describe('likeness', () => {
  test('is 1 with itself, the same both ways, and falls with distance', () => {
    expect(likeness(first, first, needs)).toBe(1);
    expect(likeness(first, soft, needs)).toBe(likeness(soft, first, needs));
    expect(likeness(first, twin, needs)).toBeGreaterThan(likeness(first, soft, needs));
  });

  test('looks only at what is needed and known of both', () => {
    expect(likeness(shoe('x', { rebound: 1 }), shoe('y', { rebound: 5 }), needs)).toBe(1);
    expect(likeness(shoe('x', { cushion: 3 }), shoe('y', { cushion: 3, mass: 500 }), needs)).toBe(1);
  });

  test('four noticeable steps apart is wholly different', () => {
    const only = [need('mass', [250, 300])];
    // A step of mass is 30 g in the attribute table.
    expect(likeness(shoe('x', { mass: 200 }), shoe('y', { mass: 320 }), only)).toBe(0);
    expect(likeness(shoe('x', { mass: 200 }), shoe('y', { mass: 260 }), only)).toBe(0.5);
  });
});
