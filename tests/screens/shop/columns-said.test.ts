import { describe, expect, it } from 'vitest';
import { COLUMN_GROUPS } from '../../../src/screens/shop/columns-said.ts';
import { COLUMNS } from '../../../src/stock/columns.ts';
import { readStock } from '../../../src/stock/read-csv.ts';

const { needed, size } = COLUMN_GROUPS;
const read = (cells: Readonly<Record<string, string>>) =>
  readStock(`${Object.keys(cells).join(',')}\n${Object.values(cells).join(',')}\n`, { asOf: '2026-11-25T09:12' });
/** A size that each size column takes. */
const SIZES: Readonly<Record<string, string>> = { eu: '42', cm: '26.5', mondopoint: '265', 'inner length (mm)': '277' };
/** A line of an invented list: something in each needed column, and one size. */
const line = (sizeColumn: string): Readonly<Record<string, string>> => ({
  ...Object.fromEntries(needed.map(({ header }) => [header, 'toy'])),
  [sizeColumn]: SIZES[sizeColumn] ?? '8',
});
const without = (cells: Readonly<Record<string, string>>, header: string) =>
  Object.fromEntries(Object.entries(cells).filter(([key]) => key !== header));

describe('what a shop is told that a list must hold', () => {
  it('names every column that is read, each once', () => {
    const told = Object.values(COLUMN_GROUPS).flat();
    expect(told).toHaveLength(COLUMNS.length);
    expect(new Set(told)).toEqual(new Set(COLUMNS));
  });

  it.each(needed.map(({ header }) => header))('is so: without “%s” nothing is loaded', (header) => {
    expect(read(line('uk')).value?.boxes).toHaveLength(1);
    expect(read(without(line('uk'), header)).value).toBeUndefined();
  });

  it.each(size.map(({ header }) => header))('is enough: a box whose size stands under “%s” is loaded', (header) => {
    expect(read(line(header)).value?.boxes).toHaveLength(1);
  });

  it('is so of sizes: a box without any is refused', () => {
    const { value, findings } = read(without(line('uk'), 'uk'));
    expect(value?.boxes ?? []).toHaveLength(0);
    expect(findings.map(({ code }) => code)).toContain('stock-box-without-size');
  });
});
