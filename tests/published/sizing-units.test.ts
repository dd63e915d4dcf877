import convert from 'convert';
import { describe, expect, test } from 'vitest';
import { eu, euLast } from '../../src/sizing/systems/eu.ts';
import { uk, ukLast } from '../../src/sizing/systems/uk.ts';
import { BARLEYCORN, fromMillimetres, PARIS_POINT, toMillimetres } from '../../src/units/length.ts';
import { fromGrams, toGrams } from '../../src/units/mass.ts';

// The npm package `convert` knows inches, centimetres and ounces, and shares no code with this project.
describe('an independent library of units agrees', () => {
  const lengths = [0.5, 1, 4, 8.5, 10.25, 10.5, 11, 12.2, 25.4, 103.7];

  test.each(lengths)('%d inches and centimetres in millimetres and back', (value) => {
    expect(toMillimetres(value, 'in')).toBeCloseTo(convert(value, 'inch').to('millimeter'), 9);
    expect(toMillimetres(value, 'cm')).toBeCloseTo(convert(value, 'centimeter').to('millimeter'), 9);
    expect(fromMillimetres(value, 'in')).toBeCloseTo(convert(value, 'millimeter').to('inch'), 9);
    expect(fromMillimetres(value, 'cm')).toBeCloseTo(convert(value, 'millimeter').to('centimeter'), 9);
  });

  test.each([0.1, 1, 8.1, 10, 352])('%d ounces in grams and back', (value) => {
    expect(toGrams(value, 'oz')).toBeCloseTo(convert(value, 'ounce').to('gram'), 8);
    expect(fromGrams(value, 'oz')).toBeCloseTo(convert(value, 'gram').to('ounce'), 8);
  });

  // Read: a barleycorn is a third of an inch, 8.46667 mm, and half of it 4.23333 (article "Barleycorn (unit)").
  test('a barleycorn is a third of an inch', () => {
    expect(BARLEYCORN).toBeCloseTo(convert(1 / 3, 'inch').to('millimeter'), 9);
    expect(BARLEYCORN).toBeCloseTo(8.46667, 5);
    expect(BARLEYCORN / 2).toBeCloseTo(4.23333, 5);
  });

  // Read: a Paris point is two thirds of a centimetre, 6.66667 mm, and half of it 3.33333 (article "Paris point").
  test('a Paris point is two thirds of a centimetre', () => {
    expect(PARIS_POINT).toBeCloseTo(convert(2 / 3, 'centimeter').to('millimeter'), 9);
    expect(PARIS_POINT).toBeCloseTo(6.66667, 5);
    expect(PARIS_POINT / 2).toBeCloseTo(3.33333, 5);
  });

  test.each([3, 6.5, 8, 11.5])('UK %d by the library: last and foot in thirds of an inch', (size) => {
    expect(ukLast(size)).toBeCloseTo(convert((size + 25) / 3, 'inch').to('millimeter'), 9);
    expect(uk.exact(convert((size + 23) / 3, 'inch').to('millimeter'))).toBeCloseTo(size, 9);
  });

  test.each([36, 40.5, 42, 46 + 2 / 3])('EU %d by the library: last and foot in thirds of a centimetre', (size) => {
    expect(euLast(size)).toBeCloseTo(convert((size * 2) / 3, 'centimeter').to('millimeter'), 9);
    expect(eu.exact(convert(((size - 2) * 2) / 3, 'centimeter').to('millimeter'))).toBeCloseTo(size, 9);
  });

  // Read: one source puts the English and American child origins 1/12 in, 2.1 mm, apart.
  test('a twelfth of an inch is 2.1 mm', () => {
    expect(toMillimetres(1 / 12, 'in')).toBeCloseTo(convert(1 / 12, 'inch').to('millimeter'), 8);
    expect(toMillimetres(1 / 12, 'in')).toBeCloseTo(2.1, 1);
  });
});
