import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readComfort } from '../../../src/screens/fitter/try-on/comfort.ts';
import {
  earlierOf,
  inAnotherBox,
  moved,
  rankedOf,
  recordOf,
  withNote,
  withOrder,
  withRecord,
} from '../../../src/screens/fitter/try-on/records.ts';
import { sizeTallies } from '../../../src/sizing/suggest-offset.ts';
import type { TryOn } from '../../../src/visit/visit.ts';

const both = withRecord(withRecord([], 'tern', 't42'), 'marsh', 'm42');

describe('the record of a pair', () => {
  test('begins with its box and grows by what is noted', () => {
    const noted = withRecord(both, 'tern', 't42', {
      notes: withNote(recordOf(both, 'tern'), 'heel', 'lifts'),
      comfort: 70,
    });
    expect(recordOf(noted, 'tern')).toEqual({
      shoe: 'tern',
      box: 't42',
      notes: { heel: 'lifts' },
      rubs: [],
      comfort: 70,
    });
    expect(recordOf(withRecord(noted, 'tern', 't42', { comfort: undefined }), 'tern')).not.toHaveProperty('comfort');
    expect(withNote(recordOf(noted, 'tern'), 'heel', undefined)).toEqual({});
    expect(recordOf(noted, 'marsh')).toEqual(recordOf(both, 'marsh'));
  });

  test('starts afresh in the next box, keeps what was wrong with the first, and keeps its place', () => {
    const small = withOrder(withRecord(both, 'tern', 't42', { size: 'too-small', comfort: 40 }), ['tern', 'marsh']);
    const next = inAnotherBox(small, 'tern', 't43');
    expect(recordOf(next, 'tern')).toEqual({ shoe: 'tern', box: 't43', notes: {}, rubs: [], rank: 1 });
    expect(earlierOf(next, 'tern')).toEqual([
      { shoe: 'tern', box: 't42', notes: {}, rubs: [], size: 'too-small', comfort: 40 },
    ]);
    expect(rankedOf(next)).toEqual(['tern', 'marsh']);
    expect(sizeTallies(withRecord(next, 'tern', 't43', { size: 'right' }))).toEqual([
      { shoe: 'tern', tooSmall: 1, right: 0, tooBig: 0 },
    ]);
  });
});

describe('the customer’s order', () => {
  test('is tapped, moved and taken back', () => {
    const order = withOrder(both, ['marsh', 'tern']);
    expect(rankedOf(order)).toEqual(['marsh', 'tern']);
    expect(rankedOf(withOrder(order, moved(rankedOf(order), 'tern', -1)))).toEqual(['tern', 'marsh']);
    expect(rankedOf(withOrder(order, ['tern']))).toEqual(['tern']);
    expect(withOrder(order, [])).toEqual(both);
  });

  test('ends stay where they are', () => {
    expect(moved(['a', 'b'], 'a', -1)).toEqual(['a', 'b']);
    expect(moved(['a', 'b'], 'b', 1)).toEqual(['a', 'b']);
    expect(moved(['a', 'b'], 'c', 1)).toEqual(['a', 'b']);
  });

  test('is always read back as it was written, with ranks from 1 and no gaps', () => {
    const shoes = ['a', 'b', 'c', 'd', 'e'];
    const all = shoes.reduce((records, shoe) => withRecord(records, shoe, `${shoe}1`), [] as readonly TryOn[]);
    fc.assert(
      fc.property(fc.shuffledSubarray(shoes), fc.subarray(shoes), (order, wrongSize) => {
        const tried = wrongSize.reduce((records, shoe) => inAnotherBox(records, shoe, `${shoe}2`), all);
        const ranked = withOrder(tried, order);
        expect(rankedOf(ranked)).toEqual(order);
        expect(ranked.flatMap(({ rank }) => rank ?? []).sort()).toEqual(order.map((_, at) => at + 1));
      }),
    );
  });
});

describe('comfort as a number', () => {
  test('readComfort: is whole, from 0 to 100, or left empty', () => {
    expect(readComfort('72').value).toBe(72);
    expect(readComfort(' 71,6 ').value).toBe(72);
    expect(readComfort('')).toEqual({ findings: [] });
    for (const text of ['101', '-1', 'good', '7 0', 'x'.repeat(900)]) {
      expect(readComfort(text)).toMatchObject({ findings: [{ code: 'comfort-unclear' }] });
    }
  });
});
