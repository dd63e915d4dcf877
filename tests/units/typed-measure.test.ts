import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromMillimetres, LENGTH_UNITS, toMillimetres } from '../../src/units/length.ts';
import { fromGrams, MASS_UNITS, toGrams } from '../../src/units/mass.ts';
import { nearest } from '../../src/units/round.ts';
import { tidy } from '../../src/units/tidy.ts';
import { otherUnit, readMeasure } from '../../src/units/typed-measure.ts';
import { plainText, typedNumber } from '../../src/units/typed-number.ts';

/** A foot's length, as a field for millimetres would expect it. */
const FOOT = { unit: 'mm', from: 90, to: 350 } as const;
const code = (text: string) => readMeasure(text, FOOT).findings.map((finding) => finding.code);

describe('a measure typed at the kiosk', () => {
  test.each([
    ['265', 265],
    ['265 mm', 265],
    ['26,5 cm', 265],
    ['26.5cm', 265],
    ['26.5 CM.', 265],
    ['10 1/2 in', 266.7],
    ['10½″', 266.7],
    ['10.5"', 266.7],
    ['10,5 Zoll', 266.7],
    ['  265  ', 265],
    ['٢٦٥', 265],
    ['\ufeff265', 265],
  ])('%s is read', (text, mm) => {
    expect(readMeasure(text, FOOT)).toEqual({ value: expect.objectContaining({ value: mm }), findings: [] });
  });

  test('is echoed back as it was typed', () => {
    expect(readMeasure('26,5 cm', FOOT).value?.typed).toEqual({ value: 26.5, unit: 'cm' });
  });

  test.each([
    ['26', 26, 'cm'],
    ['2600', 260, 'mm'],
    ['10.5', 10.5, 'in'],
    ['265 cm', 265, 'mm'],
  ])('%s is questioned with the unit, never changed', (text, guess, guessUnit) => {
    const { value, findings } = readMeasure(text, FOOT);
    expect(value).toBeUndefined();
    expect(findings).toEqual([
      expect.objectContaining({
        code: 'measure-other-unit',
        severity: 'error',
        data: expect.objectContaining({ guess, guessUnit }),
      }),
    ]);
  });

  test.each([
    ['abc', 'measure-letters'],
    ['26a', 'measure-letters'],
    ['2e5', 'measure-letters'],
    ['26 feet', 'measure-letters'],
    ['<b>265</b>', 'measure-letters'],
    ['1.265,5', 'measure-unclear'],
    ['2-6', 'measure-unclear'],
    ['1/0', 'measure-unclear'],
    ['10 3/2', 'measure-unclear'],
    ['9'.repeat(100), 'measure-unclear'],
    ['-265', 'measure-negative'],
    ['300 g', 'measure-wrong-kind'],
    ['3', 'measure-out-of-range'],
  ])('%s is refused as %s', (text, expected) => {
    expect(code(text)).toEqual([expected]);
  });

  test('nothing typed is no measure and no finding', () => {
    expect(readMeasure('   ', FOOT)).toEqual({ findings: [] });
  });

  test('a mass in ounces is read in grams', () => {
    expect(readMeasure('10 oz', { unit: 'g', from: 50, to: 1500 }).value?.value).toBe(283.49523125);
  });
});

describe('examples', () => {
  test('toMillimetres, fromMillimetres, toGrams, fromGrams', () => {
    expect(toMillimetres(10.5, 'in')).toBe(266.7);
    expect(fromMillimetres(266.7, 'in')).toBe(10.5);
    expect(toGrams(10, 'oz')).toBe(283.49523125);
    expect(fromGrams(283.49523125, 'oz')).toBe(10);
  });
  test('tidy and nearest', () => {
    expect(tidy(10.1 * 25.4)).toBe(256.54);
    expect(nearest(34.25, 0.5)).toBe(34.5);
    expect(nearest(262.5, 5)).toBe(265);
  });
  test('plainText and typedNumber', () => {
    expect(plainText(' 10½″ ')).toBe('10 1/2"');
    expect(typedNumber('26,5')).toBe(26.5);
    expect(typedNumber('10 1/2')).toBe(10.5);
  });
  test('readMeasure and otherUnit', () => {
    expect(readMeasure('26,5 cm', FOOT).value?.value).toBe(265);
    expect(readMeasure('10 1/2 in', FOOT).value?.value).toBe(266.7);
    expect(readMeasure('26', FOOT).findings[0]).toMatchObject({ data: { guess: 26, guessUnit: 'cm' } });
    expect(otherUnit(26, 'mm', FOOT)).toEqual({ value: 26, unit: 'cm' });
    expect(otherUnit(2600, 'mm', FOOT)).toEqual({ value: 260, unit: 'mm' });
  });
});

describe('laws', () => {
  const decimal = fc.integer({ min: 1, max: 400_000 }).map((n) => n / 1000);

  test('units in and out agree', () => {
    fc.assert(
      fc.property(decimal, fc.constantFrom(...LENGTH_UNITS), fc.constantFrom(...MASS_UNITS), (value, length, mass) => {
        expect(fromMillimetres(toMillimetres(value, length), length)).toBeCloseTo(value, 9);
        expect(fromGrams(toGrams(value, mass), mass)).toBeCloseTo(value, 9);
      }),
    );
  });

  test('a foot typed in any unit, with comma or point, is the same foot', () => {
    fc.assert(
      fc.property(fc.integer({ min: 900, max: 3500 }), fc.boolean(), (tenths, comma) => {
        const write = (value: number) => (comma ? String(value).replace('.', ',') : String(value));
        const mm = tenths / 10;
        expect(readMeasure(`${write(mm)} mm`, FOOT).value?.value).toBe(mm);
        expect(readMeasure(`${write(tenths / 100)}cm`, FOOT).value?.value).toBe(mm);
        expect(readMeasure(`${write(fromMillimetres(mm, 'in'))} in`, FOOT).value?.value).toBeCloseTo(mm, 6);
      }),
    );
  });

  test('any text at all gives a value in range or a finding, and never throws', () => {
    const bits = fc.constantFrom('2', '6', '5', ',', '.', ' ', '/', '½', 'cm', 'in', '"', 'a', '-', '\u0000', '٣', 'g');
    const text = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 60 }),
      fc.array(bits, { maxLength: 12 }).map((x) => x.join('')),
    );
    fc.assert(
      fc.property(text, (typed) => {
        const { value, findings } = readMeasure(typed, FOOT);
        if (value === undefined) expect(findings.length === 1 || plainText(typed) === '').toBe(true);
        else expect(value.value >= 90 && value.value <= 350 && findings.length === 0).toBe(true);
      }),
      { numRuns: 3000 },
    );
  });

  test('rounding never strays further than half a step, and ties go up', () => {
    fc.assert(
      fc.property(decimal, fc.constantFrom(0.5, 1 / 3, 5, 7.5), (value, step) => {
        const off = nearest(value, step) - value;
        expect(off).toBeLessThanOrEqual(step / 2 + 1e-6);
        expect(off).toBeGreaterThan(-step / 2);
      }),
    );
  });
});
