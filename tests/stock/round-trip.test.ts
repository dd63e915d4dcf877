import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { COLUMNS } from '../../src/stock/columns.ts';
import { readStock } from '../../src/stock/read-csv.ts';
import { stockTemplate } from '../../src/stock/template.ts';
import { writeStock } from '../../src/stock/write-csv.ts';
import { messyList } from './messy-lists.ts';
import { survives } from './round-trip.ts';

// The soak test runs the same laws a hundred thousand times.
const numRuns = 1500;

describe('any list at all', () => {
  test('never throws, and what loads is written and read back the same', () => {
    let loaded = 0;
    fc.assert(
      fc.property(messyList, ({ text }) => {
        loaded += survives(text) > 0 ? 1 : 0;
      }),
      { numRuns, seed: 20261125 },
    );
    // A law about lists that never load would say nothing.
    expect(loaded).toBeGreaterThan(numRuns / 5);
  });

  test('never throws on text that is no list', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.string({ unit: 'binary' })), (text) => void survives(text)),
      { numRuns, seed: 20261125 },
    );
  });
});

describe('writing', () => {
  test('leaves out columns nobody filled and says the figures of a model once', () => {
    const text = 'shoe,model,shelf,box,eu,on hand,drop\nheron,Heron,men,h1,42,1,8\nheron,,,h2,43,1,\n';
    const value = readStock(text, { asOf: '' }).value;
    expect(value && writeStock(value)).toBe(
      'shoe,model,use,shelf,drop (mm),box,eu,place,on hand,reserved\nheron,Heron,,men,8,h1,42,,1,0\nheron,,,,,h2,43,,1,0\n',
    );
  });

  test('makes a formula harmless and brings it back as it was', () => {
    const text = 'shoe,model,shelf,box,eu,on hand,note\nheron,=HYPERLINK("x"),men,h1,42,1,@SUM(1)\n';
    const value = readStock(text, { asOf: '' }).value;
    const written = value ? writeStock(value) : '';
    expect(written).toContain('"\'=HYPERLINK(""x"")"');
    expect(written).toContain("'@SUM(1)");
    expect(readStock(written, { asOf: '' }).value).toEqual(value);
  });

  test('the template holds every column and loads, and its example lines are found to stand there still', () => {
    for (const options of [{}, { delimiter: ';', decimal: ',' }] as const) {
      const { value, findings } = readStock(stockTemplate(options), { asOf: '' });
      expect(findings.map(({ code, severity }) => [code, severity])).toEqual([['stock-example-lines', 'note']]);
      expect(value?.boxes).toHaveLength(2);
    }
    expect(stockTemplate().split('\n')[0]?.split(',')).toEqual(COLUMNS.map(({ header }) => header));
  });
});
