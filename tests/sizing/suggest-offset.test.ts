import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addTallies, type SizeTally, sizeTallies, suggestOffset } from '../../src/sizing/suggest-offset.ts';

const tally = (tooSmall: number, right: number, tooBig: number): SizeTally => ({
  shoe: 'tern',
  tooSmall,
  right,
  tooBig,
});

describe('notes of a wrong size on one model', () => {
  test('suggestOffset: three that it was too small suggest that it runs small', () => {
    expect(suggestOffset(tally(3, 1, 0), undefined)).toEqual({
      shoe: 'tern',
      runs: 'small',
      offset: -4.2,
      notes: 3,
      of: 4,
    });
    expect(suggestOffset(tally(0, 0, 3), undefined)).toMatchObject({ runs: 'large', offset: 4.2 });
  });

  test('two suggest nothing, and neither do three among as many others', () => {
    expect(suggestOffset(tally(2, 0, 0), undefined)).toBeUndefined();
    expect(suggestOffset(tally(3, 3, 0), undefined)).toBeUndefined();
    expect(suggestOffset(tally(3, 0, 3), undefined)).toBeUndefined();
    expect(suggestOffset(tally(0, 9, 0), undefined)).toBeUndefined();
  });

  test('stand on top of the offset that the model has', () => {
    expect(suggestOffset(tally(4, 0, 0), -4)?.offset).toBe(-8.2);
    expect(suggestOffset(tally(0, 0, 4), -4.2)?.offset).toBe(0);
  });

  test('small and large are mirrors of each other', () => {
    const count = fc.integer({ min: 0, max: 12 });
    fc.assert(
      fc.property(count, count, count, (a, b, c) => {
        const one = suggestOffset(tally(a, b, c), undefined);
        const other = suggestOffset(tally(c, b, a), undefined);
        expect(one === undefined).toBe(other === undefined);
        if (one && other) expect(one.offset).toBe(-other.offset);
      }),
    );
  });
});

describe('the sums of try-ons', () => {
  test('sizeTallies: count the first box of each model, and what was said of it alone', () => {
    expect(
      sizeTallies([
        { shoe: 'tern', size: 'too-small' },
        { shoe: 'tern', size: 'right' },
      ]),
    ).toEqual([{ shoe: 'tern', tooSmall: 1, right: 0, tooBig: 0 }]);
    expect(sizeTallies([{ shoe: 'tern' }, { shoe: 'tern', size: 'too-big' }])).toEqual([]);
  });

  test('three customers for whom the advised box was too small add up to a suggestion', () => {
    const day = [1, 2, 3].flatMap(() =>
      sizeTallies([
        { shoe: 'tern', size: 'too-small' },
        { shoe: 'marsh', size: 'right' },
        { shoe: 'tern', size: 'right' },
      ]),
    );
    const sums = addTallies(day);
    expect(sums).toEqual([
      { shoe: 'marsh', tooSmall: 0, right: 3, tooBig: 0 },
      { shoe: 'tern', tooSmall: 3, right: 0, tooBig: 0 },
    ]);
    expect(sums.map((each) => suggestOffset(each, undefined)?.runs)).toEqual([undefined, 'small']);
  });
});
