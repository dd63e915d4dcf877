import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boxesToFetch, fetchFrom, fitBox, runsOf } from '../../src/sizing/box-fit.ts';
import { judgeBox, type SizedShoe } from '../../src/sizing/judge-box.ts';
import { sizeAdvice } from '../../src/sizing/size-advice.ts';
import type { Box } from '../../src/stock/shoe.ts';

// Toy boxes of an invented model.
const SHOE: SizedShoe = { shelf: 'any' };
let next = 0;
const box = (labels: Box['labels'], more: Partial<Box> = {}): Box => ({
  id: `b${String(next++).padStart(4, '0')}`,
  shoe: 'toy',
  labels,
  place: 'A1',
  onHand: 2,
  reserved: 0,
  ...more,
});
const adviceFor = (length: number, more: Parameters<typeof sizeAdvice>[0] = {}) =>
  sizeAdvice({ feet: { left: { length }, right: { length }, posture: 'standing', sock: 'worn-sock' }, ...more });
const labels = (fits: readonly { readonly box: Box }[]) => fits.map((fit) => Object.values(fit.box.labels).join(' '));

describe('what a box is judged by', () => {
  test('its inner length first, then its mark, then its label with the model’s offset, then the formula', () => {
    const all = { eu: '42', uk: '8', mondopoint: '265' };
    const offset = { ...SHOE, sizeOffset: -4 };
    expect(judgeBox(box(all, { innerLength: 277 }), offset)).toMatchObject({ by: 'inner-length', inner: 277 });
    expect(judgeBox(box(all), SHOE)).toMatchObject({ by: 'mondopoint', inner: 277.5 });
    expect(judgeBox(box({ eu: '42' }), offset)).toMatchObject({ by: 'label-with-offset' });
    expect(judgeBox(box({ eu: '42' }), SHOE)).toMatchObject({ by: 'formula' });
    const [known, formula] = [offset, SHOE].map((shoe) => judgeBox(box({ eu: '42' }), shoe)?.inner ?? 0);
    expect((formula ?? 0) - (known ?? 0)).toBeCloseTo(4, 9);
  });

  test('the more trusted the source, the smaller the doubt', () => {
    const doubt = (each: Box, shoe: SizedShoe = SHOE) => judgeBox(each, shoe)?.doubt ?? 0;
    expect(doubt(box({}, { innerLength: 277 }))).toBeLessThan(doubt(box({ mondopoint: '265' })));
    expect(doubt(box({ mondopoint: '265' }))).toBeLessThanOrEqual(doubt(box({ eu: '42' }), { ...SHOE, sizeOffset: 0 }));
    expect(doubt(box({ eu: '42' }), { ...SHOE, sizeOffset: 0 })).toBeLessThan(doubt(box({ eu: '42' })));
  });

  test('several labels count by the middle of what they say', () => {
    expect(judgeBox(box({ eu: '42', uk: '8' }), SHOE)?.inner).toBeCloseTo(277.07, 2);
  });

  test('US women’s offset is the model’s own and never inferred', () => {
    const women = box({ 'us-women': '10' });
    const inner = (usWomenOffset?: number) =>
      judgeBox(women, usWomenOffset === undefined ? SHOE : { ...SHOE, usWomenOffset });
    expect((inner(1)?.inner ?? 0) - (inner(1.5)?.inner ?? 0)).toBeCloseTo(25.4 / 6, 9);
    expect(inner()?.inner).toBe(inner(1)?.inner);
    expect(inner()?.doubt).toBeGreaterThan(inner(1)?.doubt ?? 0);
    // Beside another label a women's size of unknown offset says nothing.
    expect(judgeBox(box({ 'us-women': '15', uk: '8' }), SHOE)?.inner).toBe(judgeBox(box({ uk: '8' }), SHOE)?.inner);
  });

  test('centimetres that are the last’s are not taken for the foot’s', () => {
    const last = judgeBox(box({ cm: '28', eu: '42' }), SHOE);
    expect(last).toMatchObject({ by: 'formula', findings: [{ code: 'cm-may-be-last' }] });
    expect(judgeBox(box({ cm: '26.5', eu: '42' }), SHOE)).toMatchObject({ by: 'mondopoint', findings: [] });
  });

  test('labels a size apart are said to disagree, and a box that says nothing fits nobody', () => {
    expect(judgeBox(box({ eu: '42', uk: '10' }), SHOE)?.findings).toEqual([
      { code: 'labels-disagree', severity: 'note' },
    ]);
    expect(judgeBox(box({ eu: 'forty' }), SHOE)).toBeUndefined();
    expect(fitBox(box({}), SHOE, adviceFor(265))).toMatchObject({
      fits: 'no',
      findings: [{ code: 'nothing-to-judge-by' }],
    });
  });
});

describe('how a box fits', () => {
  test.each([
    [273, 'no'],
    [274, 'yes'],
    [277, 'yes'],
    [281, 'yes'],
    [284, 'maybe'],
    [286, 'no'],
  ])('inside %d mm for a foot of 265 mm: %s', (innerLength, fits) => {
    expect(fitBox(box({}, { innerLength }), SHOE, adviceFor(265)).fits).toBe(fits);
  });

  test('off is how far the inside lies from the middle of what is wanted', () => {
    expect(fitBox(box({}, { innerLength: 277 }), SHOE, adviceFor(265)).off).toBe(-0.5);
  });

  test('a child never gets under 10 mm of room by a stated length', () => {
    const child = adviceFor(165, { ageBand: 'under-6', shelf: 'junior' });
    expect(fitBox(box({}, { innerLength: 173 }), SHOE, child).fits).toBe('no');
    expect(fitBox(box({}, { innerLength: 178 }), SHOE, child).fits).toBe('yes');
  });

  test('the formula’s own size is the one that fits', () => {
    for (let foot = 220; foot <= 300; foot += 1) {
      const advice = adviceFor(foot);
      const own = [
        box({ eu: advice.labels?.eu ?? '' }),
        box({ uk: advice.labels?.uk ?? '' }),
        box({ mondopoint: advice.labels?.mondopoint ?? '' }),
      ];
      for (const each of own) expect(fitBox(each, SHOE, advice).fits).toBe('yes');
    }
  });
});

describe('the boxes to fetch', () => {
  const run = ['40', '41', '42', '43', '44'].map((eu) => box({ eu }));

  test('the nearest first, and by formula alone a second, as it may run half a size off', () => {
    expect(labels(boxesToFetch(run, SHOE, adviceFor(265)))).toEqual(['42', '41']);
    expect(labels(boxesToFetch(run, SHOE, adviceFor(268)))).toEqual(['42', '43']);
  });

  test('one is enough where the box states its length and the foot is well measured', () => {
    const stated = [270, 277.5, 285].map((innerLength) => box({}, { innerLength }));
    expect(boxesToFetch(stated, SHOE, adviceFor(265))).toHaveLength(1);
    const close = [275, 280].map((innerLength) => box({}, { innerLength }));
    expect(boxesToFetch(close, SHOE, adviceFor(265)).map((fit) => fit.box.innerLength)).toEqual([280, 275]);
  });

  test('a foot from the old box’s label brings two', () => {
    const stated = [272, 277.5, 283].map((innerLength) => box({}, { innerLength }));
    const advice = sizeAdvice({ nowSize: { value: 42, unit: 'eu' }, nowFeel: 'right' });
    expect(boxesToFetch(stated, SHOE, advice)).toHaveLength(2);
  });

  test('sold and reserved boxes stay where they are', () => {
    const gone = [box({ mondopoint: '265' }, { onHand: 0 }), box({ mondopoint: '265' }, { onHand: 1, reserved: 1 })];
    expect(fetchFrom(gone, SHOE, adviceFor(265))).toEqual({ boxes: [], state: 'sold-out', lastPair: false });
    expect(fetchFrom([], SHOE, adviceFor(265))).toEqual({ boxes: [], state: 'sold-out', lastPair: false });
  });

  test('the last pair is said', () => {
    expect(fetchFrom([box({ mondopoint: '265' }, { onHand: 2, reserved: 1 })], SHOE, adviceFor(265)).lastPair).toBe(
      true,
    );
    expect(fetchFrom([box({ mondopoint: '265' })], SHOE, adviceFor(265)).lastPair).toBe(false);
  });

  test('none in the size: the nearest is named', () => {
    const fetch = fetchFrom([box({ eu: '38' }), box({ eu: '45.5' })], SHOE, adviceFor(265));
    expect(fetch.state).toBe('not-in-size');
    expect(fetch.nearest?.box.labels.eu).toBe('45.5');
    expect(fetch.boxes).toEqual([]);
  });

  test('without a foot: measure first', () => {
    expect(fetchFrom(run, SHOE, sizeAdvice({}))).toEqual({ boxes: [], state: 'measure-first', lastPair: false });
    expect(fitBox(run[0] as Box, SHOE, sizeAdvice({}))).toMatchObject({
      fits: 'maybe',
      findings: [{ code: 'measure-first' }],
    });
  });

  test('a wide foot gets the wide box first', () => {
    const both = [box({ mondopoint: '265' }), box({ mondopoint: '265' }, { width: 'wide' })];
    const wide = adviceFor(265, {
      shelf: 'men',
      feet: { left: { length: 265, ballGirth: 265 }, right: { length: 265 }, posture: 'standing', sock: 'worn-sock' },
    });
    expect(boxesToFetch(both, SHOE, wide)[0]?.box.width).toBe('wide');
    expect(boxesToFetch(both, SHOE, adviceFor(265))[0]?.box.width).toBeUndefined();
  });

  test('a model that runs small is fetched longer', () => {
    const small = { ...SHOE, sizeOffset: -5 };
    expect(labels(boxesToFetch(run, small, adviceFor(265)))[0]).toBe('43');
    expect(runsOf({ shelf: 'any', sizeOffset: -4 })).toBe('small');
    expect(runsOf({ shelf: 'any', sizeOffset: 4 })).toBe('large');
    expect(runsOf(SHOE)).toBeUndefined();
  });

  test('boxes are never relabelled', () => {
    for (const { box: fetched } of boxesToFetch(run, SHOE, adviceFor(265))) expect(run).toContain(fetched);
  });
});

describe('laws', () => {
  const foot = fc.integer({ min: 2200, max: 3000 }).map((tenths) => tenths / 10);
  const stock = fc.oneof(
    fc
      .uniqueArray(fc.integer({ min: 230, max: 320 }), { maxLength: 12 })
      .map((mms) => mms.map((innerLength) => box({}, { innerLength }))),
    fc
      .uniqueArray(fc.integer({ min: 72, max: 96 }), { maxLength: 12 })
      .map((halves) => halves.map((half) => box({ eu: String(half / 2) }))),
    fc
      .uniqueArray(fc.integer({ min: 44, max: 62 }), { maxLength: 12 })
      .map((fives) => fives.map((five) => box({ mondopoint: String(five * 5) }))),
  );

  test('a longer foot never gets a shorter first box', () => {
    fc.assert(
      fc.property(stock, foot, fc.nat(150), (boxes, length, more) => {
        const inner = (at: number) => {
          const first = boxesToFetch(boxes, SHOE, adviceFor(at))[0];
          return first && judgeBox(first.box, SHOE)?.inner;
        };
        const [short, long] = [inner(length), inner(length + more / 10)];
        if (short !== undefined && long !== undefined) expect(long).toBeGreaterThanOrEqual(short);
      }),
    );
  });

  test('the order of the boxes in the file changes nothing', () => {
    fc.assert(
      fc.property(stock, foot, (boxes, length) => {
        expect(boxesToFetch(boxes.toReversed(), SHOE, adviceFor(length))).toEqual(
          boxesToFetch(boxes, SHOE, adviceFor(length)),
        );
      }),
    );
  });

  test('what is fetched fits or may fit, is on hand, and the two are not of one length', () => {
    fc.assert(
      fc.property(stock, foot, (boxes, length) => {
        const [first, second, ...more] = boxesToFetch(boxes, SHOE, adviceFor(length));
        expect(more).toEqual([]);
        for (const each of [first, second]) if (each) expect(each.fits).not.toBe('no');
        if (first && second) expect(Math.abs(first.off - second.off)).toBeGreaterThan(1);
      }),
    );
  });
});
