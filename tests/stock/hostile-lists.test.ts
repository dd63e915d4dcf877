import { describe, expect, test } from 'vitest';
import { readStock } from '../../src/stock/read-csv.ts';
import type { Finding } from '../../src/units/result.ts';
import { LANGUAGES, said } from './words-for-tests.ts';

// Toy stock lists, all invented. The sizes are those at which a slow reader takes minutes and a careless one throws.
const asOf = '2026-11-25T09:12';
const HEADER = 'shoe,model,shelf,mass (g),drop (mm),box,eu,place,on hand';
const GOOD = 'heron,Marsh Heron,women,245,8,h1,39,A1,2';
const read = (text: string) => readStock(text, { asOf });
const codes = (findings: readonly Finding[]) => [...new Set(findings.map(({ code }) => code))];

describe('a shop that loads something that is hardly a stock list', () => {
  test('of five million blank lines and then a list gets its list', () => {
    expect(read(`${'\n'.repeat(5_000_000)}${HEADER}\n${GOOD}`).value?.boxes).toHaveLength(1);
  });

  test('with sixteen thousand blank columns behind its own, as spreadsheets write, gets its list', () => {
    const blank = ','.repeat(16_000);
    expect(read(`${HEADER}${blank}\n${`${GOOD}${blank}`}`).value?.boxes).toHaveLength(1);
  });

  test.each([
    ['of one name', ',x'.repeat(10_000)],
    ['of as many names', Array.from({ length: 200_000 }, (_, at) => `,c${at}`).join('')],
  ])('with more columns than any list has, %s, is told so', (_, more) => {
    const { value, findings } = read(`${HEADER}${more}\n${GOOD}`);
    expect(value).toBeUndefined();
    expect(codes(findings)).toEqual(['stock-too-many-columns']);
    for (const words of LANGUAGES) expect(said(words, findings[0] as Finding)).not.toContain('{{');
  });

  test('with a column name of a hundred thousand brackets waits no longer for it', () => {
    const { value, findings } = read(`${HEADER},${'('.repeat(90_000)}\n${GOOD}`);
    expect(value?.boxes).toHaveLength(1);
    for (const { column } of findings) expect(column?.length ?? 0).toBeLessThan(130);
  });

  test('whose first line never closes a quotation mark is told which line it is', () => {
    const { value, findings } = read(`shoe,model,"box,eu\n${`${GOOD}\n`.repeat(20_000)}`);
    expect(value).toBeUndefined();
    expect(findings).toMatchObject([{ code: 'stock-row-quote', line: 1 }]);
  });

  test('whose second line never closes a quotation mark loses that line and no other', () => {
    const lines = Array.from({ length: 20_000 }, (_, at) => `heron,Marsh Heron,women,245,8,h${at},39,A1,2`);
    const { value, findings } = read(`${HEADER}\n"${[GOOD, ...lines].join('\n')}`);
    expect(value?.boxes).toHaveLength(20_000);
    expect(findings).toMatchObject([{ code: 'stock-row-quote', line: 2 }]);
  });

  test('with a stray quotation mark on each of half a million lines hears of it within seconds', () => {
    const { value, findings } = read(`${HEADER}\n${'"a"b,x\n'.repeat(500_000)}`);
    expect(value).toBeUndefined();
    expect(codes(findings)).toContain('stock-row-quote');
  });

  test('with the same box on two hundred thousand lines gets it once and a finding for each other line', () => {
    const { value, findings } = read(`${HEADER}\n${`${GOOD}\n`.repeat(200_000)}`);
    expect(value?.boxes).toHaveLength(1);
    expect(findings).toHaveLength(199_999);
  });

  test.each([
    ['of one letter each', 'x\n'],
    ['wrong in every cell', `${'x,'.repeat(8)}x\n`],
    ['of an open quotation mark and more', '"\n\n","x\n"\n'],
  ])('with lines %s to the end of the largest file is told so, and nothing runs full', (_, line) => {
    const { value, findings } = read(`${HEADER}\n${line.repeat(Math.floor(24_900_000 / line.length))}`);
    expect(value).toBeUndefined();
    expect(codes(findings)).toEqual(['stock-no-end']);
    for (const words of LANGUAGES) expect(said(words, findings[0] as Finding)).not.toContain('{{');
  });

  test.each(['utf16le', 'utf-16 with a mark'])('saved as Unicode text (%s) is told how to save it', (kind) => {
    const bytes = Buffer.from(`${kind === 'utf16le' ? '' : '\uFEFF'}${HEADER}\n${GOOD}`, 'utf16le');
    expect(codes(read(bytes.toString('utf8')).findings)).toEqual(['stock-not-text']);
  });
});

describe('a shoe whose name holds letters that show nothing but do something', () => {
  test.each([
    ['turns round what stands beside it', 'Marsh\u202E Heron\u2066'],
    ['rings a bell and clears the screen', 'Marsh\u0007\u001B[2J Heron'],
    ['ends too soon', 'Marsh\u0000 Heron'],
    ['was cut in the middle of a letter', 'Marsh\uD83D Heron'],
  ])('and %s stands there without them, and the shop is told', (_, name) => {
    const { value, findings } = read(`${HEADER},note\nhe\u202Eron,${name},women,245,8,h1,39,A\u001B1,2,\u0000x`);
    expect(value?.shoes[0]?.name).toBe(name.includes('[2J') ? 'Marsh[2J Heron' : 'Marsh Heron');
    expect(value?.shoes[0]?.id).toBe('heron');
    expect(value?.boxes[0]).toMatchObject({ place: 'A1', extra: { note: 'x' } });
    const hidden = findings.filter(({ code }) => code === 'stock-hidden');
    expect(hidden.map(({ column }) => column)).toEqual(['shoe', 'model', 'place', 'note']);
    for (const words of LANGUAGES) expect(said(words, hidden[0] as Finding)).not.toContain('{{');
  });

  test('keeps the joiners that some scripts and pictures are written with', () => {
    const name = 'کفش\u200Cها 👟\u200D🦶 \u200Fنعل';
    expect(read(`${HEADER}\nheron,${name},women,245,8,h1,39,A1,2`).value?.shoes[0]?.name).toBe(name);
  });

  test('cannot stand beside a box of the same look', () => {
    const { findings } = read(`${HEADER}\n${GOOD}\n${GOOD.replace('h1', 'h\u00001')}`);
    expect(codes(findings)).toContain('stock-box-twice');
  });
});
