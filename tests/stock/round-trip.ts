import { expect } from 'vitest';
import { readStock } from '../../src/stock/read-csv.ts';
import { writeStock } from '../../src/stock/write-csv.ts';

/** Reads a list; whatever loads is written and read back the same, whichever way it is written. Counts the boxes that loaded. */
export function survives(text: string): number {
  const asOf = '2026-11-25T09:12';
  const { value, findings } = readStock(text, { asOf });
  expect(value !== undefined || findings.some((finding) => finding.severity === 'error')).toBe(true);
  if (!value) return 0;
  for (const options of [{}, { delimiter: ';', decimal: ',' }, { delimiter: '\t' }] as const) {
    const again = readStock(writeStock(value, options), { asOf });
    expect(
      again.findings.filter((finding) => finding.severity === 'error' && finding.code !== 'stock-column-unit'),
    ).toEqual([]);
    expect(again.value).toEqual(value);
  }
  return value.boxes.length;
}
