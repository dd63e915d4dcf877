import { describe, expect, test } from 'vitest';
import { likeness } from '../../src/shortlist/likeness.ts';
import { pickLineUp } from '../../src/shortlist/line-up.ts';
import { byOrder } from '../../src/shortlist/order.ts';
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
