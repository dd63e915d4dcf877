import { describe, expect, test } from 'vitest';
import { footFromInsole } from '../../src/observation/insole.ts';
import { larger, longerFoot } from '../../src/observation/longer-foot.ts';
import type { Feet } from '../../src/observation/observation.ts';
import { oldPairNotes } from '../../src/observation/old-pair-notes.ts';
import { questionFeet, usableFeet } from '../../src/observation/question-feet.ts';

const standing = { posture: 'standing', sock: 'worn-sock' } as const;
const codes = (feet: Feet, shelf?: 'men' | 'women' | 'junior') => questionFeet(feet, shelf).map(({ code }) => code);

describe('the longer foot', () => {
  test('decides, whichever it is', () => {
    expect(longerFoot({ left: { length: 262 }, right: { length: 268 }, ...standing })).toEqual({
      length: 268,
      side: 'right',
      difference: 6,
    });
    expect(longerFoot({ left: { length: 268 }, right: { length: 262 }, ...standing })).toEqual({
      length: 268,
      side: 'left',
      difference: 6,
    });
    expect(longerFoot({ left: { length: 265 }, right: { length: 265 }, ...standing })).toEqual({
      length: 265,
      side: 'both',
      difference: 0,
    });
    expect(longerFoot({ right: { length: 265 }, ...standing })).toEqual({ length: 265, side: 'only-right' });
    expect(longerFoot({ left: { width: 99 }, ...standing })).toBeUndefined();
  });

  test('the larger of a measure', () => {
    expect(larger({ left: { width: 99 }, right: { width: 101 }, ...standing }, 'width')).toBe(101);
    expect(larger({ left: {}, ...standing }, 'width')).toBeUndefined();
  });
});

describe('feet that look odd', () => {
  test('40 mm apart: measure again', () => {
    const feet = { left: { length: 225 }, right: { length: 265 }, ...standing };
    expect(questionFeet(feet)).toEqual([{ code: 'feet-far-apart', severity: 'error', data: { mm: 40 } }]);
    expect(usableFeet(feet, questionFeet(feet))).toEqual({ left: {}, right: {}, ...standing });
    expect(questionFeet({ ...feet, checked: true })).toEqual([
      { code: 'feet-far-apart', severity: 'note', data: { mm: 40 } },
    ]);
  });

  test.each([
    [{ ballGirth: 95, width: 100 }, 'girth-below-width', {}],
    [{ length: 240, ballLength: 250 }, 'ball-beyond-toe', { length: 240 }],
    [{ width: 90, heelWidth: 95 }, 'heel-wider-than-ball', {}],
    [{ length: 100, width: 100 }, 'width-beyond-length', { length: 100 }],
  ])('what cannot be on one foot: %#', (left, code, kept) => {
    expect(codes({ left, ...standing })).toEqual([code]);
    expect(usableFeet({ left, ...standing }, questionFeet({ left, ...standing })).left).toEqual(kept);
  });

  test('a length that belongs on another shelf', () => {
    expect(codes({ left: { length: 170 }, ...standing }, 'men')).toEqual(['short-for-shelf']);
    expect(codes({ left: { length: 275 }, ...standing }, 'junior')).toEqual(['long-for-junior']);
    expect(codes({ left: { length: 230 }, ...standing }, 'women')).toEqual([]);
  });

  test('an ordinary pair of feet is not questioned', () => {
    const foot = { length: 265, ballLength: 196, ballGirth: 250, width: 100, heelWidth: 70 };
    expect(questionFeet({ left: foot, right: { ...foot, length: 262 }, ...standing }, 'men')).toEqual([]);
  });
});

describe('the old pair', () => {
  test('gives a foot’s length by its toe print, or roughly without', () => {
    expect(footFromInsole({ insoleLength: 280, toePrintGap: 14 })).toEqual({ length: 266, doubt: 4 });
    expect(footFromInsole({ insoleLength: 280 })).toEqual({ length: 267.5, doubt: 7 });
    expect(footFromInsole({ toePrintGap: 14 })).toBeUndefined();
  });

  test('is noted as seen', () => {
    expect(oldPairNotes({ toePrintGap: 6, spill: 'outer', heelLining: 'torn' })).toEqual([
      'toe-print-short',
      'spill-outer',
      'heel-lining-torn',
    ]);
    expect(oldPairNotes({ toePrintGap: 25, bulge: 'inner', soleWear: 'worn-out' })).toEqual([
      'toe-print-long',
      'bulge-inner',
      'sole-worn-out',
    ]);
    expect(
      oldPairNotes({ toePrintGap: 12, spill: 'none', bulge: 'none', heelLining: 'whole', soleWear: 'even' }),
    ).toEqual([]);
  });
});
