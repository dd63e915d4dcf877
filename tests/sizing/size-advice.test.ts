import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Feet } from '../../src/observation/observation.ts';
import { alsoLabelled, euByOlderRule, euThroughLast, euWithAllowance } from '../../src/sizing/also-labelled.ts';
import { archDifference } from '../../src/sizing/arch-length.ts';
import { fromBoxLabel } from '../../src/sizing/foot-source.ts';
import { formulaLabels } from '../../src/sizing/formula-labels.ts';
import { growthOf, growthPerMonth, monthsOfRoom, nextCheck } from '../../src/sizing/growth.ts';
import { type SizeInput, sizeAdvice } from '../../src/sizing/size-advice.ts';
import { doubtWord } from '../../src/sizing/size-notes.ts';
import { reportOf, sizeOf } from '../../src/sizing/size-of.ts';
import { stackPoints } from '../../src/sizing/stack-points.ts';
import { toeRoom } from '../../src/sizing/toe-room.ts';
import { predicted, widthOf, widthWord, zOf } from '../../src/sizing/width.ts';
import { parseWidth, widthLetter } from '../../src/sizing/width-letters.ts';

const standing = { posture: 'standing', sock: 'worn-sock' } as const;
const feet = (left: number, right: number, more: Partial<Feet> = {}): Feet => ({
  ...standing,
  left: { length: left },
  right: { length: right },
  ...more,
});
const codes = (input: SizeInput) => sizeAdvice(input).findings.map((finding) => finding.code);

describe('two measured feet', () => {
  test('the longer foot decides', () => {
    expect(sizeAdvice({ feet: feet(262, 265) })).toMatchObject({
      from: 'measured',
      footLength: 265,
      difference: 3,
      doubt: 1,
      toeRoom: [10, 15],
      innerLength: [275, 280],
      findings: [],
    });
  });

  test('a difference over 4 mm is said aloud, 4 mm is not', () => {
    expect(codes({ feet: feet(260, 264) })).toEqual([]);
    expect(sizeAdvice({ feet: feet(260, 265) }).findings).toEqual([
      { code: 'right-longer', severity: 'note', data: { mm: 5 } },
    ]);
    expect(codes({ feet: feet(266, 260) })).toEqual(['left-longer']);
  });

  test('a heel lift or a prosthesis is not a difference, and no note tells of it', () => {
    for (const inside of ['heel-lift', 'prosthesis']) {
      const advice = sizeAdvice({ feet: feet(240, 265), inside: [inside] });
      expect(advice.findings).toEqual([]);
      expect(JSON.stringify(advice)).not.toContain(inside);
      expect(advice.footLength).toBe(265);
    }
  });

  test('feet 40 mm apart are measured again before anyone is sized by them', () => {
    const input = { feet: feet(225, 265) };
    expect(sizeAdvice(input)).toMatchObject({ from: 'none' });
    expect(codes(input)).toEqual(['feet-far-apart', 'measure-first']);
    expect(sizeAdvice({ feet: feet(225, 265, { checked: true }) })).toMatchObject({
      from: 'measured',
      footLength: 265,
    });
  });

  test('a girth below the width is asked about and widens nothing', () => {
    const advice = sizeAdvice({
      shelf: 'men',
      feet: { ...standing, left: { length: 265, ballGirth: 95, width: 100 } },
    });
    expect(advice.findings.map((finding) => finding.code)).toContain('girth-below-width');
    expect(advice).toMatchObject({ footLength: 265 });
    expect(advice.width).toBeUndefined();
  });

  test('a child’s length on the men’s shelf is asked about', () => {
    expect(codes({ shelf: 'men', feet: feet(170, 171) })).toEqual(['short-for-shelf']);
    expect(codes({ shelf: 'junior', feet: feet(275, 275) })).toContain('long-for-junior');
  });

  test('centimetres in a millimetre field are asked about, not multiplied', () => {
    expect(sizeAdvice({ feet: feet(26, 26.5) })).toMatchObject({ from: 'none' });
    expect(codes({ feet: feet(26, 26.5) })).toEqual(['measure-other-unit', 'measure-other-unit', 'measure-first']);
  });

  test('how they were measured is said and widens the doubt', () => {
    const seated = sizeAdvice({ feet: feet(262, 265, { posture: 'seated', sock: 'barefoot', time: 'late' }) });
    expect(seated.findings.map((finding) => finding.code)).toEqual([
      'measured-seated',
      'try-with-sock',
      'measured-late',
    ]);
    expect(seated.doubt).toBeCloseTo(4.7, 9);
  });

  test('one foot alone leaves the other’s 4 mm in doubt', () => {
    const advice = sizeAdvice({ feet: { ...standing, left: { length: 265 } } });
    expect(advice.doubt).toBe(5);
    expect(advice.findings.map((finding) => finding.code)).toEqual(['one-foot-measured']);
  });

  test('a ball more than 8 mm from where it should lie, or unlike the other foot’s: look where it bends', () => {
    expect(codes({ feet: { ...standing, left: { length: 270, ballLength: 206 }, right: { length: 270 } } })).toEqual([
      'look-where-it-bends',
    ]);
    expect(
      codes({ feet: { ...standing, left: { length: 270, ballLength: 204 }, right: { length: 270, ballLength: 195 } } }),
    ).toEqual(['look-where-it-bends']);
    expect(
      codes({ feet: { ...standing, left: { length: 270, ballLength: 200 }, right: { length: 270, ballLength: 201 } } }),
    ).toEqual([]);
  });

  test('an old pair a whole size off the feet is said', () => {
    expect(codes({ feet: feet(265, 265), nowSize: { value: 40, unit: 'eu' }, nowFeel: 'right' })).toEqual([
      'old-size-differs',
    ]);
    expect(codes({ feet: feet(265, 265), nowSize: { value: 42, unit: 'eu' }, nowFeel: 'right' })).toEqual([]);
  });
});

describe('less than two measured feet', () => {
  test('the insole comes before the label, and the label before nothing', () => {
    const oldPair = { insoleLength: 280, toePrintGap: 14 };
    const nowSize = { value: 42, unit: 'eu' };
    expect(sizeAdvice({ oldPair, nowSize, nowFeel: 'right' })).toMatchObject({
      from: 'insole',
      footLength: 266,
      doubt: 4,
    });
    expect(sizeAdvice({ nowSize, nowFeel: 'right' })).toMatchObject({ from: 'box-label', footLength: 266.7, doubt: 5 });
    expect(sizeAdvice({})).toMatchObject({ from: 'none', findings: [{ code: 'measure-first' }] });
  });

  test('a pair that feels short stands for a longer foot, one that feels long for a shorter', () => {
    const foot = (nowFeel: string) => sizeAdvice({ nowSize: { value: 8, unit: 'uk' }, nowFeel }).footLength ?? 0;
    const order = ['too-long', 'a-bit-long', 'right', 'a-bit-short', 'too-short'].map(foot);
    expect(order).toEqual(order.toSorted((a, b) => a - b));
    expect(new Set(order).size).toBe(5);
  });

  test('a label has the wider doubt, wider still for a child, and for US women’s two scales', () => {
    const doubt = (unit: string, ageBand: string) =>
      sizeAdvice({ nowSize: { value: 9, unit }, nowFeel: 'right', ageBand }).doubt;
    expect(doubt('uk', '18-to-64')).toBeGreaterThan(sizeAdvice({ feet: feet(262, 265) }).doubt);
    expect(doubt('us-women', '18-to-64')).toBeGreaterThan(doubt('us-men', '18-to-64'));
    expect(doubt('uk-child', '6-to-10')).toBeGreaterThan(doubt('uk-child', '18-to-64'));
    expect(codes({ nowSize: { value: 9, unit: 'us-women' }, nowFeel: 'right' })).toEqual([
      'from-box',
      'us-women-two-scales',
    ]);
  });

  test('nobody is sized from an age or a shelf', () => {
    expect(sizeAdvice({ ageBand: '6-to-10', shelf: 'junior' })).toMatchObject({ from: 'none' });
    expect(codes({ ageBand: '6-to-10', shelf: 'junior' })).toEqual(['measure-child-first']);
    expect(sizeAdvice({ ageBand: '6-to-10', shelf: 'junior' }).labels).toBeUndefined();
  });

  test('a size in no known system, or not sure, is no size', () => {
    expect(sizeAdvice({ nowSize: { value: 42, unit: 'toString' } }).from).toBe('none');
    expect(sizeAdvice({ nowSize: 'not-sure', nowFeel: 'right' }).from).toBe('none');
    expect(sizeAdvice({ nowSize: { value: 4200, unit: 'eu' } }).from).toBe('none');
  });
});

describe('toe room', () => {
  test('goes by the activity for adults', () => {
    expect(sizeAdvice({ feet: feet(265, 265), activityRoom: [6, 10] })).toMatchObject({
      toeRoom: [6, 10],
      innerLength: [271, 275],
      leastRoom: 6,
    });
    expect(sizeAdvice({ feet: feet(265, 265), activityRoom: [12, 18] })).toMatchObject({
      toeRoom: [12, 18],
      leastRoom: 10,
    });
  });

  test('is never less than a child’s own, whatever the activity', () => {
    const child = sizeAdvice({ feet: feet(165, 165), activityRoom: [6, 10], ageBand: 'under-6', shelf: 'junior' });
    expect(child).toMatchObject({ toeRoom: [12, 17], leastRoom: 10, growth: { nextCheck: 3, months: [2, 7] } });
    expect(child.findings).toEqual([{ code: 'measure-again', severity: 'note', data: { count: 3 } }]);
  });
});

describe('laws', () => {
  const foot = fc.integer({ min: 2000, max: 3200 }).map((tenths) => tenths / 10);
  const room = fc
    .tuple(fc.integer({ min: 4, max: 14 }), fc.integer({ min: 1, max: 8 }))
    .map(([low, more]): [number, number] => [low, low + more]);

  test('left and right swapped changes nothing but the side named', () => {
    const one = fc.record(
      {
        length: foot,
        ballLength: fc.integer({ min: 140, max: 240 }),
        ballGirth: fc.integer({ min: 90, max: 320 }),
        width: fc.integer({ min: 60, max: 130 }),
      },
      { requiredKeys: [] },
    );
    const plain = (input: SizeInput) => {
      const { findings, ...rest } = sizeAdvice(input);
      const named = (text: string | undefined) => text?.replace(/left|right/, 'side');
      return {
        ...rest,
        findings: findings.map((each) => `${named(each.code)} ${named(each.at)} ${JSON.stringify(each.data)}`).sort(),
      };
    };
    fc.assert(
      fc.property(one, one, fc.constantFrom('men', 'women', 'junior', 'any'), (left, right, shelf) => {
        const there = { ...standing, left, right };
        const back = { ...standing, left: right, right: left };
        expect(plain({ feet: there, shelf })).toEqual(plain({ feet: back, shelf }));
      }),
    );
  });

  test('a longer foot never gets a shorter shoe or a smaller label', () => {
    fc.assert(
      fc.property(foot, fc.nat(200), room, (length, more, activityRoom) => {
        const [short, long] = [length, length + more / 10].map((each) =>
          sizeAdvice({ feet: feet(each, each), activityRoom }),
        );
        expect(long?.innerLength?.[0]).toBeGreaterThanOrEqual(short?.innerLength?.[0] ?? Number.NaN);
        for (const system of ['mondopoint', 'eu', 'uk', 'usMen', 'usWomen'] as const) {
          const [a, b] = [short?.labels?.[system], long?.labels?.[system]].map(Number);
          if (!Number.isNaN(a) && !Number.isNaN(b)) expect(b).toBeGreaterThanOrEqual(a ?? 0);
        }
      }),
    );
  });

  test('anything at all in the observation gives advice and never throws', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.jsonValue(), fc.jsonValue(), (left, right, oldPair) => {
        const advice = sizeAdvice({
          feet: { left, right, posture: 'standing', sock: 'worn-sock' } as Feet,
          oldPair: oldPair as object,
        });
        expect(['measured', 'insole', 'none']).toContain(advice.from);
      }),
    );
  });
});

describe('examples', () => {
  test('sizeOf is one flat object', () => {
    expect(sizeOf(262, 265)).toMatchObject({
      footLength: 265,
      mondopoint: '265',
      eu: '42',
      uk: '8.5',
      usMen: '9.5',
      usWomen: '10.5',
      toeRoom: [10, 15],
      innerLength: [275, 280],
      findings: [],
    });
    expect(reportOf(sizeAdvice({})).from).toBe('none');
    expect(sizeOf(270, 262, { girth: 270, shelf: 'men' }).width).toMatchObject({ word: 'wide', letter: 'EEEE' });
    expect(sizeOf(undefined, 265).footLength).toBe(265);
  });
  test('formulaLabels', () => {
    expect(formulaLabels(265)).toEqual({ mondopoint: '265', eu: '42', uk: '8.5', usMen: '9.5', usWomen: '10.5' });
    expect(formulaLabels(165)).toMatchObject({ eu: '27', uk: '–', ukChild: '9.5', usChild: '10' });
  });
  test('alsoLabelled: some makers label this EU 42', () => {
    expect(alsoLabelled(262.5)).toEqual([
      { system: 'eu', label: '42', why: 'through-the-last' },
      { system: 'eu', label: '42.5', why: 'more-allowance' },
      { system: 'us-women', label: '10.5', why: 'women-and-a-half' },
    ]);
    expect(euThroughLast(262.4666666666667)).toBeCloseTo(41.91, 9);
    expect(euWithAllowance(250, 20)).toBeCloseTo(40.5, 9);
    expect(euByOlderRule(250)).toBe(40);
  });
  test('width', () => {
    expect(predicted('men', 'girth', 270)).toBeCloseTo(251.315, 9);
    expect(zOf('men', 'girth', 270, 270)).toBeCloseTo(1.8, 2);
    expect(widthOf(270, { girth: 270 }, 'men')).toMatchObject({ word: 'wide', by: 'girth', letter: 'EEEE' });
    expect(widthOf(170, { girth: 170 }, 'junior')).toBeUndefined();
    expect(widthOf(245, { breadth: 92 }, 'women')).toMatchObject({ word: 'standard', by: 'breadth' });
    expect(widthOf(245, { breadth: 92 }, 'women')).not.toHaveProperty('letter');
    expect(widthWord(-1.64)).toBe('narrow');
    expect(widthLetter('wide', 'women')).toBe('D');
    expect(parseWidth('EE', 'men')).toBe('wide');
    expect(parseWidth('extra wide', 'junior')).toBe('extra-wide');
    expect(parseWidth('D', 'junior')).toBeUndefined();
  });
  test('width letters are read back as printed', () => {
    for (const shelf of ['men', 'women'] as const) {
      for (const width of ['narrow', 'standard', 'wide', 'extra-wide'] as const) {
        expect(parseWidth(widthLetter(width, shelf) ?? '', shelf)).toBe(width);
      }
    }
  });
  test('growth', () => {
    expect(growthPerMonth('under-6', 165)).toBe(1);
    expect(growthPerMonth('6-to-10', 200)).toBe(0.8);
    expect(growthPerMonth('18-to-64', 265)).toBeUndefined();
    expect(monthsOfRoom(17, 1)).toBe(7);
    expect(monthsOfRoom(15, 0.8)).toBe(6);
    expect(monthsOfRoom(8, 1)).toBe(0);
    expect(nextCheck(15, 'under-6', 165)).toBe(3);
    expect(nextCheck(11, '6-to-10', 200)).toBe(1);
    expect(growthOf([12, 17], 'under-6', 165)).toEqual({ perMonth: 1, months: [2, 7], nextCheck: 3 });
  });
  test('the rest', () => {
    expect(toeRoom(undefined, '18-to-64', 'men')).toEqual({ room: [10, 15], least: 10 });
    expect(toeRoom([6, 10], '6-to-10', 'junior')).toEqual({ room: [12, 17], least: 10 });
    expect(archDifference(270, 206)).toBeCloseTo(8.4, 1);
    expect(stackPoints(280)).toEqual({ heel: 33.6, forefoot: 210 });
    expect(fromBoxLabel({ value: 42, unit: 'eu' }, 'a-bit-short', false)).toEqual({
      from: 'box-label',
      length: 270.9,
      doubt: 5,
    });
    expect([1, 5, 9].map(doubtWord)).toEqual(['sure', 'fair', 'rough']);
  });
});
