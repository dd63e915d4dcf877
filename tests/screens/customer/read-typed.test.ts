import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readTyped } from '../../../src/screens/customer/questions/read-typed.ts';

/** Ranges of a toy question. */
const EU = { id: 'eu', from: 16, to: 52 };
const MM = { id: 'mm', from: 90, to: 330 };

describe('a size as people type it', () => {
  it('is read as in the examples', () => {
    expect(readTyped('42 2/3', 'eu', [EU])).toEqual({ value: 42.667 });
    expect(readTyped('265', 'eu', [EU, MM])).toMatchObject({ code: 'other-unit', data: { other: 'mm' } });
  });

  it.each([
    ['42', 42],
    ['42,5', 42.5],
    [' 42.5 ', 42.5],
    ['42½', 42.5],
    ['42⅔', 42.667],
    ['EU 42', 42],
    ['42 eu', 42],
    ['٤٢٫٥', 42.5],
    ['٤٢،٥', 42.5],
  ])('“%s” is understood', (typed, value) => {
    expect(readTyped(typed, 'eu', [EU, MM])).toEqual({ value });
  });

  it.each([
    ['', 'empty', {}],
    ['   ', 'empty', {}],
    ['large', 'letters', { typed: 'large' }],
    ['4.2.5', 'letters', { typed: '4.2.5' }],
    ['<b>42</b>', 'letters', { typed: '<b>42</b>' }],
    ['-42', 'letters', { typed: '-42' }],
    ['7', 'outside', { typed: '7', from: 16, to: 52 }],
    ['265 مم', 'other-unit', { typed: '265 مم', from: 16, to: 52, other: 'mm' }],
    ['uk 42', 'outside', { typed: 'uk 42', from: 16, to: 52 }],
    ['265', 'other-unit', { typed: '265', from: 16, to: 52, other: 'mm' }],
  ])('“%s” is answered with %s', (typed, code, data) => {
    expect(readTyped(typed, 'eu', [EU, MM])).toMatchObject({ code, data });
  });

  it.each([
    ['20,5 cm', { value: 20.5, unit: 'cm' }],
    ['20.5cm', { value: 20.5, unit: 'cm' }],
    ['265 mm', { value: 265, unit: 'mm' }],
    ['9 in', { value: 229, unit: 'mm' }],
    ['9 1/2"', { value: 241, unit: 'mm' }],
    ['9½″', { value: 241, unit: 'mm' }],
    ['9½”', { value: 241, unit: 'mm' }],
    ['٢٠٫٥ سم', { value: 20.5, unit: 'cm' }],
  ])('“%s” where EU is chosen is offered as what it says', (typed, meant) => {
    expect(readTyped(typed, 'eu', [EU, MM, { id: 'cm', from: 9, to: 33 }])).toMatchObject({
      code: 'other-unit',
      meant,
    });
  });

  it('“20 mm” is not taken for centimetres because they would hold a 20', () => {
    expect(readTyped('20 mm', 'eu', [EU, MM, { id: 'cm', from: 9, to: 33 }])).toMatchObject({ code: 'outside' });
  });

  it('inches are taken as millimetres where millimetres are chosen', () => {
    expect(readTyped('10 in', 'mm', [EU, MM])).toEqual({ value: 254 });
  });

  it('nothing typed ever throws, and a value is always in range', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[0-9.,/ ½⅔-]{0,8}$/)), (typed) => {
        const read = readTyped(typed, 'eu', [EU, MM]);
        if ('value' in read) expect(read.value >= EU.from && read.value <= EU.to).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
});

it('a book pasted for a size is said back by its beginning alone', () => {
  const read = readTyped('4 '.repeat(500_000), 'eu', [{ id: 'eu', from: 16, to: 52 }]);
  expect(read).toMatchObject({ code: 'letters' });
  expect(JSON.stringify(read).length).toBeLessThan(100);
});
