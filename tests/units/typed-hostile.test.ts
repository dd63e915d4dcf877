import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { SYSTEMS } from '../../src/sizing/systems/systems.ts';
import { LABEL_SYSTEMS } from '../../src/stock/shoe.ts';
import { readMeasure } from '../../src/units/typed-measure.ts';
import { plainText, typedNumber } from '../../src/units/typed-number.ts';

/** A foot's length, as a field for millimetres would expect it. */
const FOOT = { unit: 'mm', from: 90, to: 350 } as const;
/** Zero of Latin, Arabic-Indic, extended Arabic-Indic and full-width digits. */
const ZEROS = [0x30, 0x660, 0x6f0, 0xff10];
const inDigits = (text: string, zero: number) =>
  text.replaceAll(/\d/g, (digit) => String.fromCodePoint(zero + Number(digit)));

const typed = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 60 }),
  fc.string({ unit: 'grapheme', maxLength: 20 }),
  fc.string({ unit: fc.constantFrom(...'0123456789٠٥۲５½⅔.,٫،٬/⁄ -−"″mcinغمس\u200f\u2067\u061c²'), maxLength: 12 }),
);

describe('whatever is typed for a measure', () => {
  test('is read within its range, or answered once, or was nothing', () => {
    fc.assert(
      fc.property(typed, (text) => {
        const { value, findings } = readMeasure(text, FOOT);
        if (value) expect(value.value >= FOOT.from && value.value <= FOOT.to && findings.length === 0).toBe(true);
        else expect(findings).toHaveLength(plainText(text) === '' ? 0 : 1);
      }),
      { numRuns: 3000 },
    );
  });

  test('means the same in the digits of any keyboard, with any decimal sign', () => {
    const length = fc.integer({ min: 900, max: 3500 }).map((tenths) => tenths / 10);
    fc.assert(
      fc.property(
        length,
        fc.constantFrom(...ZEROS),
        fc.constantFrom('.', ',', '٫', '،', '．', '，'),
        (mm, zero, sign) => {
          const text = inDigits(String(mm), zero).replace('.', sign);
          expect(readMeasure(text, FOOT).value?.value).toBe(mm);
        },
      ),
    );
  });

  test.each([
    ['٢٦٫٥ سم', 265],
    ['٢٦،٥ سم', 265],
    ['٢٦٥ ملم', 265],
    ['265 مليمتر', 265],
    ['\u2067٢٦٥\u2069 مم', 265],
    ['265\u061c', 265],
    ['265 millimètres', 265],
    ['26,5 centímetros', 265],
    ['10 1/2 pouces', 266.7],
    ['10½ pulgadas', 266.7],
    ['١٠ ١/٢ بوصة', 266.7],
  ])('in the words of its language (%s) is read', (text, mm) => {
    expect(readMeasure(text, FOOT).value?.value).toBe(mm);
  });

  test('with a raised or circled digit is not read as a longer number', () => {
    for (const text of ['10²', '26⁵', '26₅', '26⑤']) expect(readMeasure(text, FOOT).value).toBeUndefined();
    expect(typedNumber(plainText('42²'))).toBeUndefined();
  });

  test('may be what the kiosk itself suggests, in every language', () => {
    for (const language of readdirSync('flows/words')) {
      const { finding } = JSON.parse(readFileSync(`flows/words/${language}/size.json`, 'utf8'));
      for (const words of [finding['measure-letters'], finding['measure-unclear']]) {
        const [example = ''] = /26[.,]5\s\p{L}+/u.exec(words) ?? [];
        expect(readMeasure(example, FOOT).value?.value, `${language}: ${example}`).toBe(265);
      }
    }
  });
});

describe('whatever is typed for a size', () => {
  test('is a size of its system, which prints and reads back the same, or is none', () => {
    fc.assert(
      fc.property(typed, fc.constantFrom(...LABEL_SYSTEMS), (text, id) => {
        const system = SYSTEMS[id];
        const size = system.parse(text);
        if (size === undefined) return;
        expect(Number.isFinite(system.foot(size))).toBe(true);
        expect(system.parse(system.print(size))).toBeCloseTo(size, 9);
      }),
      { numRuns: 3000 },
    );
  });

  test('comes back in the digits of any keyboard', () => {
    const size = fc
      .tuple(fc.constantFrom(...LABEL_SYSTEMS), fc.integer({ min: 80, max: 330 }), fc.constantFrom(...ZEROS))
      .map(([id, foot, zero]) => ({ system: SYSTEMS[id], made: SYSTEMS[id].size(foot), zero }));
    fc.assert(
      fc.property(size, ({ system, made, zero }) => {
        if (made !== undefined) expect(system.parse(inDigits(system.print(made), zero))).toBe(made);
      }),
    );
  });
});
