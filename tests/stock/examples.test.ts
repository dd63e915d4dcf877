import { describe, expect, test } from 'vitest';
import { attribute } from '../../src/attributes/table.ts';
import { checkShoe } from '../../src/stock/check-shoe.ts';
import { guarded, unguarded } from '../../src/stock/formula.ts';
import { measuringPage } from '../../src/stock/how-to-measure.ts';
import { boxesByShoe } from '../../src/stock/index-boxes.ts';
import { readLabel } from '../../src/stock/read-label.ts';
import { readNumber } from '../../src/stock/read-number.ts';
import { readList } from '../../src/stock/read-words.ts';
import type { Box, Stock } from '../../src/stock/shoe.ts';
import { available, type BoxMark, isLastPair, stockToday, withoutLastMark } from '../../src/stock/today.ts';
import { LANGUAGES } from './words-for-tests.ts';

const [words] = LANGUAGES;
const box = (id: string, shoe: string, onHand: number, reserved = 0): Box => ({
  id,
  shoe,
  labels: { eu: '39' },
  place: 'A1',
  onHand,
  reserved,
});
const m1 = box('m1', 'marsh-heron', 2);
const m2 = box('m2', 'marsh-heron', 1);
const t1 = box('t1', 'tern', 1);
const stock: Stock = { shoes: [], boxes: [m1, t1, m2], asOf: '2026-11-25T09:12' };
const mark = (of: string, what: BoxMark['what'], at: string): BoxMark => ({ box: of, what, at });

describe('the examples in the docs hold', () => {
  test('numbers', () => {
    expect(readNumber('8,5', { from: 0, to: 30, unit: 'mm' })).toEqual({ value: 8.5 });
    expect(readNumber('8.5 mm', { from: 0, to: 30, unit: 'mm' })).toEqual({ value: 8.5 });
    expect(readNumber('1.250', { from: 60, to: 1500, unit: 'g' })).toEqual({ code: 'stock-not-a-number' });
    expect(readNumber('85', { from: 0, to: 30, unit: 'mm' })).toEqual({ code: 'stock-out-of-range' });
    expect(readNumber('€ 119,95', { from: 1, to: 2000, unit: 'money' })).toEqual({ value: 119.95 });
    expect(readNumber('-0', { from: -1, to: 1 })).toEqual({ value: 0 });
  });

  test('size labels', () => {
    expect(readLabel('eu', '42  2/3')).toBe('42 2/3');
    expect(readLabel('mondopoint', '270/103')).toBe('270/103');
    expect(readLabel('eu', '08. Feb')).toBeUndefined();
    expect(readLabel('eu', '270')).toBeUndefined();
  });

  test('lists', () => {
    expect(readList(attribute('closure'), 'Laces | klett')).toEqual({ items: ['laces', 'strap'], strange: [] });
    expect(readList(attribute('materials'), 'mesh, seaweed')).toEqual({
      items: ['mesh', 'seaweed'],
      strange: ['seaweed'],
    });
  });

  test('drop against stacks', () => {
    expect(checkShoe({ 'heel-stack': 30, 'forefoot-stack': 24, drop: 10 })?.code).toBe('stock-drop-off');
    expect(checkShoe({ 'heel-stack': 30, 'forefoot-stack': 24, drop: 8 })).toBeUndefined();
    expect(checkShoe({ 'heel-stack': 8, drop: 12 })?.code).toBe('stock-drop-above-stack');
  });

  test('formulas', () => {
    expect(guarded('=SUM(A1)')).toBe("'=SUM(A1)");
    expect(guarded('Marsh & Co')).toBe('Marsh & Co');
    expect(unguarded("'=SUM(A1)")).toBe('=SUM(A1)');
  });

  test('boxes of a model', () => {
    expect(boxesByShoe(stock).get('marsh-heron')).toEqual([m1, m2]);
    expect(boxesByShoe(stock).get('unknown')).toBeUndefined();
  });

  test('the measuring page', () => {
    expect(words && measuringPage(words).startsWith('<article class="measuring"')).toBe(true);
  });
});

describe('what happened to a box today', () => {
  const onHand = (marks: readonly BoxMark[], date = '2026-11-25') =>
    stockToday(stock, marks, date).boxes.map((one) => one.onHand);

  test('a pair sold is one fewer', () => {
    expect(onHand([mark('m1', 'sold', '2026-11-25T10:30')])).toEqual([1, 1, 1]);
  });

  test('a box sold out twice over has none, never fewer', () => {
    const sold = ['10:30', '10:31', '10:32'].map((time) => mark('m1', 'sold', `2026-11-25T${time}`));
    expect(onHand(sold)).toEqual([0, 1, 1]);
  });

  test('a pair sold before the list was made is in the list already', () => {
    expect(onHand([mark('m1', 'sold', '2026-11-25T08:00')])).toEqual([2, 1, 1]);
  });

  test('a box not on its shelf cannot be fetched, whatever a younger list says', () => {
    expect(onHand([mark('m1', 'not-on-the-shelf', '2026-11-25T08:00')])).toEqual([0, 1, 1]);
  });

  test('tomorrow starts afresh', () => {
    expect(onHand([mark('m1', 'not-on-the-shelf', '2026-11-25T10:30')], '2026-11-26')).toEqual([2, 1, 1]);
  });

  test('a tap can be taken back', () => {
    const marks = [mark('m1', 'sold', '2026-11-25T10:30'), mark('t1', 'sold', '2026-11-25T10:31')];
    expect(onHand(withoutLastMark(marks, 'm1'))).toEqual([2, 0, 1]);
    expect(withoutLastMark(marks, 'm2')).toEqual(marks);
  });

  test('a pair put by for somebody is not the last pair to offer', () => {
    expect(available({ onHand: 2, reserved: 1 })).toBe(1);
    expect(isLastPair({ onHand: 2, reserved: 1 })).toBe(true);
    expect(isLastPair({ onHand: 1, reserved: 1 })).toBe(false);
    expect(available({ onHand: 0, reserved: 1 })).toBe(0);
  });
});

describe('the measuring page', () => {
  test.each(LANGUAGES.map((one) => [one.language, one] as const))(
    'tells for every column how to measure and what to write, in %s',
    (_, language) => {
      const page = measuringPage(language);
      expect(page.match(/<section id="measure-/g)).toHaveLength(32);
      expect(page).toContain('(1-5)');
      expect(page).not.toContain('{{');
      // Nothing that a strict content security policy would block.
      expect(page).not.toMatch(/style=|<script|onclick/);
    },
  );
});
