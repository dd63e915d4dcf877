import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkTemplate, readTemplate } from '../../src/card/check-template.ts';
import { readShop } from '../../src/card/read-shop.ts';
import { readDocument } from '../../src/flow/check/document.ts';
import { readStockCopy } from '../../src/storage/shop-copy.ts';
import { tooDeepAt } from '../../src/units/nested.ts';
import { readAnswersFile } from '../../src/visit/answers-file.ts';

const deep = '['.repeat(100_000) + ']'.repeat(100_000);
const demo = readFileSync('demo/shop.json', 'utf8');
const toy = { id: 'toy', version: 1, languages: ['en'], sections: [] } as unknown as Parameters<
  typeof readAnswersFile
>[2];
const noTables = { activities: [], floors: [], 'shoe-kinds': [] };

describe('a shop that opens a file made to break the kiosk', () => {
  it('of brackets within brackets is told that it is no such file', () => {
    expect(tooDeepAt('[[1]]')).toBeUndefined();
    expect(tooDeepAt('{"a": "[[[["}')).toBeUndefined();
    expect(readShop(deep, 'f').findings[0]?.code).toBe('shop-not-json');
    expect(checkTemplate('f', deep)[0]?.code).toBe('template-not-json');
    expect(readDocument({ path: 'f', text: deep }).findings[0]?.code).toBe('bad-json');
    expect(readAnswersFile(deep, 'f', toy, noTables).findings[0]?.code).toBe('file-not-json');
  });

  it('of a hundred thousand fields hears of it at once', () => {
    const many = `{${Array.from({ length: 100_000 }, (_, at) => `"k${at}": 1`).join(',')}}`;
    expect(readShop(many, 'f').findings[0]?.code).toBe('shop-not-json');
    expect(readAnswersFile(many, 'f', toy, noTables).findings[0]?.code).toBe('file-not-json');
  });

  it('that only lends its fields does not get a shop without a name', () => {
    expect(readShop(`{"__proto__": ${demo}}`, 'f').value).toBeUndefined();
  });

  it('with a name no card can hold is refused', () => {
    for (const name of ['x'.repeat(201), 'Yard\u202E', 'Yard\u001B[2J']) {
      expect(readShop(JSON.stringify({ ...JSON.parse(demo), name }), 'f').findings[0]?.code).toBe('shop-wrong');
    }
  });

  it('with comments in a card format is told, and the kiosk does not stop', () => {
    const text = `// mine\n${readFileSync('print-templates/a5/template.json', 'utf8')}`;
    expect(readTemplate('f', text).findings[0]?.code).toBe('template-not-json');
  });

  it('from a tablet whose clock shows no day keeps its own stock', () => {
    const copy = (asOf: string) =>
      JSON.stringify({ kind: 'lacewing-stock', version: 1, asOf, marks: [], list: 'shoe,model,box,eu\na,b,c,40' });
    expect(readStockCopy(copy('2026-99-99T99:99'), '2026-11-25').findings[0]?.code).toBe('shop-copy-damaged');
    expect(readStockCopy(copy('2026-11-25T09:12:00'), '2026-11-25').value).toBeDefined();
  });
});
