import { describe, expect, test } from 'vitest';
import { refusedLines } from '../../src/stock/count-lines.ts';
import { LARGEST, readStock } from '../../src/stock/read-csv.ts';
import type { Finding } from '../../src/units/result.ts';
import { LANGUAGES, said } from './words-for-tests.ts';

// Toy stock lists, all invented.
const asOf = '2026-11-25T09:12';
const read = (...lines: string[]) => readStock(lines.join('\n'), { asOf });
const HEADER = 'shoe,model,shelf,mass (g),drop (mm),box,eu,place,on hand';
const GOOD = 'heron,Marsh Heron,women,245,8,h1,39,A1,2';

describe('a stock list that is in order', () => {
  test('loads models and boxes, and leaves what is blank unknown', () => {
    const { value, findings } = read(HEADER, 'heron,Marsh Heron,women,245,,h1,39 1/3,A1,2', 'heron,,,,,h2,40,,0');
    expect(findings).toEqual([]);
    expect(value?.asOf).toBe(asOf);
    expect(value?.shoes).toEqual([
      { id: 'heron', name: 'Marsh Heron', use: [], shelf: 'women', numbers: { mass: 245 }, marks: {}, lists: {} },
    ]);
    expect(value?.boxes).toEqual([
      { id: 'h1', shoe: 'heron', labels: { eu: '39 1/3' }, place: 'A1', onHand: 2, reserved: 0 },
      { id: 'h2', shoe: 'heron', labels: { eu: '40' }, place: '', onHand: 0, reserved: 0 },
    ]);
  });

  test('reads the same between commas, semicolons and tabs, with decimal comma or point', () => {
    const one = read(HEADER, 'heron,Marsh Heron,women,245.5,8,h1,"39,5",A1,2').value;
    const semicolon = read(HEADER.replaceAll(',', ';'), 'heron;Marsh Heron;women;245,5;8;h1;39,5;A1;2').value;
    const tab = read(HEADER.replaceAll(',', '\t'), 'heron\tMarsh Heron\twomen\t245,5\t8\th1\t39,5\tA1\t2').value;
    expect(one?.shoes[0]?.numbers.mass).toBe(245.5);
    expect(semicolon).toEqual(one);
    expect(tab).toEqual(one);
  });

  test('reads German headers and words, in any order', () => {
    const { value, findings } = read(
      'Bestand;Größe;Karton;Modell;Artikel;Regal;Fersenhöhe (mm);abriebfrei;Verschluss;Gewicht (Gramm)',
      '2;39;h1;Marsh Heron;heron;Damen;30,5 mm;ja;Klett, Schnürsenkel;245 g',
    );
    expect(findings).toEqual([]);
    expect(value?.shoes[0]).toMatchObject({
      shelf: 'women',
      numbers: { 'heel-stack': 30.5, mass: 245 },
      marks: { 'non-marking': true },
      lists: { closure: ['strap', 'laces'] },
    });
  });

  test('knows what a shoe is sold for by the shop’s own word, and lists a word it does not know', () => {
    const header = 'shoe,model,use,shelf,box,eu,on hand';
    const { value, findings } = read(header, 'heron,Marsh Heron,Laufen | bowling,women,h1,39,2');
    expect(value?.shoes[0]?.use).toEqual(['road', 'bowling']);
    expect(findings).toMatchObject([{ code: 'stock-word-unknown', column: 'use', value: 'bowling', severity: 'note' }]);
  });

  test('takes a model’s US women’s sizes as its maker counts them', () => {
    const header = 'shoe,model,shelf,us women offset,box,us women,on hand';
    const { value, findings } = read(header, 'heron,Marsh Heron,women,1.5,h1,8.5,2', 'coot,Marsh Coot,women,,c1,8.5,2');
    expect(findings).toEqual([]);
    expect(value?.shoes.map(({ usWomenOffset }) => usWomenOffset)).toEqual([1.5, undefined]);
    const codes = read(header, 'heron,Marsh Heron,women,8.5,h1,8.5,2').findings.map(({ code }) => code);
    expect(codes).toContain('stock-out-of-range');
  });

  test('takes an anchored word for its number', () => {
    const { value } = read('shoe,model,box,eu,cushion,medial support', 'heron,Heron,h1,39,very soft,none');
    expect(value?.shoes[0]?.numbers).toEqual({ cushion: 5, 'medial-support': 0 });
  });

  test('passes over a byte-order mark, blank lines, line ends of three kinds and a line that names the delimiter', () => {
    const { value, findings } = readStock(
      `\uFEFF\r\nsep=;\r\n${HEADER.replaceAll(',', ';')}\r\n;;;;;;;;\r${GOOD.replaceAll(',', ';')}\r\n`,
      { asOf },
    );
    expect(value?.boxes).toHaveLength(1);
    expect(findings).toEqual([]);
  });

  test('loads in any order of lines, since lists get sorted', () => {
    const { value, findings } = read(HEADER, 'heron,,,,,h2,40,B1,1', GOOD);
    expect(findings).toEqual([]);
    expect(value?.boxes.map((box) => box.id)).toEqual(['h2', 'h1']);
  });

  test('keeps HTML in a name as the text it is', () => {
    const { value } = read(HEADER, 'heron,<b onclick="x">Heron</b>,women,245,8,h1,39,A1,2');
    expect(value?.shoes[0]?.name).toBe('<b onclick="x">Heron</b>');
  });

  test('keeps columns it does not know, and lists them', () => {
    const { value, findings } = read(`${HEADER},supplier`, `${GOOD},North`, 'heron,,,,,h2,40,A1,1,');
    expect(findings).toEqual([{ code: 'stock-column-unknown', severity: 'note', line: 1, column: 'supplier' }]);
    expect(value?.boxes.map((box) => box.extra)).toEqual([{ supplier: 'North' }, undefined]);
  });

  test('reports how far it is, up to the end', () => {
    const seen: number[] = [];
    const lines = Array.from({ length: 2500 }, (_, at) => `heron,,,,,h${at + 2},40,A1,1`);
    readStock([HEADER, GOOD, ...lines].join('\n'), { asOf, progress: (done) => seen.push(done) });
    expect(seen).toHaveLength(3);
    expect(seen).toEqual(seen.toSorted((a, b) => a - b));
    expect(seen.at(-1)).toBe(1);
  });
});

/** One bad thing each: the lines under `header`, and the finding it makes. */
const FAULTS: readonly {
  name: string;
  header?: string;
  lines: readonly string[];
  finds: Partial<Finding>;
  refused: number;
}[] = [
  {
    name: 'a word for a number',
    lines: [GOOD, 'tern,Tern,women,light,8,t1,39,A1,2'],
    finds: {
      code: 'stock-not-a-number',
      severity: 'error',
      line: 3,
      column: 'mass (g)',
      value: 'light',
      data: { from: 60, to: 1500 },
    },
    refused: 1,
  },
  {
    name: 'a thousand with its mark, which could be one and a bit',
    lines: [GOOD, 'tern,Tern,women,1.250,8,t1,39,A1,2'],
    finds: { code: 'stock-not-a-number', value: '1.250' },
    refused: 1,
  },
  {
    name: 'a mass in kilograms',
    lines: [GOOD, 'tern,Tern,women,0.25,8,t1,39,A1,2'],
    finds: { code: 'stock-out-of-range', value: '0.25' },
    refused: 1,
  },
  {
    name: 'half a pair',
    lines: [GOOD, 'heron,,,,,h2,40,A1,1.5'],
    finds: { code: 'stock-not-whole', column: 'on hand', value: '1.5' },
    refused: 1,
  },
  {
    name: 'a shelf nobody has',
    lines: [GOOD, 'tern,Tern,cats,245,8,t1,39,A1,2'],
    finds: { code: 'stock-not-one-of', value: 'cats', data: { choices: 'men, women, junior, any' } },
    refused: 1,
  },
  {
    name: 'a fastening that is none',
    header: 'shoe,model,box,eu,on hand,closure',
    lines: ['heron,Heron,h1,39,1,laces', 'tern,Tern,t1,39,1,glue'],
    finds: { code: 'stock-not-one-of', line: 3, column: 'closure', value: 'glue' },
    refused: 1,
  },
  {
    name: 'a mark that is neither yes nor no',
    header: 'shoe,model,box,eu,on hand,waterproof',
    lines: ['heron,Heron,h1,39,1,yes', 'tern,Tern,t1,39,1,rather'],
    finds: { code: 'stock-not-yes-no', value: 'rather' },
    refused: 1,
  },
  {
    name: 'a date that a spreadsheet made of a size',
    lines: [GOOD, 'heron,,,,,h2,08. Feb,A1,1'],
    finds: { code: 'stock-not-a-label', column: 'eu', value: '08. Feb' },
    refused: 1,
  },
  {
    name: 'a name longer than any name',
    lines: [GOOD, `tern,${'T'.repeat(121)},women,245,8,t1,39,A1,2`],
    finds: { code: 'stock-too-long', data: { most: 120 } },
    refused: 1,
  },
  {
    name: 'a model with no name anywhere',
    lines: [GOOD, 'tern,,,,,t1,39,A1,2'],
    finds: { code: 'stock-model-missing', line: 3, value: 'tern' },
    refused: 1,
  },
  {
    name: 'a line without a model',
    lines: [GOOD, ',,,,,h2,40,A1,1'],
    finds: { code: 'stock-blank', column: 'shoe' },
    refused: 1,
  },
  {
    name: 'a second line that says otherwise',
    lines: [GOOD, 'heron,,,250,,h2,40,A1,1'],
    finds: { code: 'stock-row-contradicts', column: 'mass (g)', value: '250', data: { first: '245', firstLine: 2 } },
    refused: 1,
  },
  {
    name: 'a model with two lines of its own',
    lines: [GOOD, 'heron,,,,,,,,', 'heron,,,,,,,,'],
    finds: { code: 'stock-row-twice', line: 4 },
    refused: 1,
  },
  {
    name: 'a box that stands there already',
    lines: [GOOD, 'heron,,,,,h1,40,A1,1'],
    finds: { code: 'stock-box-twice', value: 'h1', data: { firstLine: 2 } },
    refused: 1,
  },
  {
    name: 'a box without its number',
    lines: [GOOD, 'heron,,,,,,40,A1,1'],
    finds: { code: 'stock-blank', column: 'box' },
    refused: 1,
  },
  {
    name: 'a box without any size',
    lines: [GOOD, 'heron,,,,,h2,,A1,1'],
    finds: { code: 'stock-box-without-size', value: 'h2' },
    refused: 1,
  },
  {
    name: 'a box nobody counted',
    lines: [GOOD, 'heron,,,,,h2,40,A1,'],
    finds: { code: 'stock-blank', column: 'on hand' },
    refused: 1,
  },
  {
    name: 'a drop that its stacks do not make',
    header: 'shoe,model,box,eu,on hand,heel stack,forefoot stack,drop',
    lines: ['heron,Heron,h1,39,1,30,24,8', 'tern,Tern,t1,39,1,30,24,8.5'],
    finds: { code: 'stock-drop-off', line: 3, value: '8.5', data: { heel: 30, forefoot: 24, difference: 6 } },
    refused: 1,
  },
  {
    name: 'a drop taller than the heel',
    header: 'shoe,model,box,eu,on hand,heel stack,drop',
    lines: ['heron,Heron,h1,39,1,30,8', 'tern,Tern,t1,39,1,8,12'],
    finds: { code: 'stock-drop-above-stack', line: 3, value: '12', data: { heel: 8 } },
    refused: 1,
  },
  {
    name: 'an unquoted decimal comma between commas',
    lines: [GOOD, 'tern,Tern,women,245,8,5,t1,39,A1,2'],
    finds: { code: 'stock-row-long', line: 3, value: '2', data: { columns: 9 } },
    refused: 1,
  },
  {
    name: 'a quotation mark that never closes',
    lines: ['tern,"Tern,women,245,8,t1,39,A1,2', GOOD],
    finds: { code: 'stock-row-quote', severity: 'error', line: 2 },
    refused: 1,
  },
  {
    name: 'a column twice',
    header: `${HEADER},weight`,
    lines: [`${GOOD},999`],
    finds: { code: 'stock-column-twice', line: 1, column: 'weight' },
    refused: 0,
  },
  {
    name: 'a column in another unit',
    header: 'shoe,model,box,eu,on hand,mass (oz)',
    lines: ['heron,Heron,h1,39,1,9'],
    finds: { code: 'stock-column-unit', column: 'mass (oz)', data: { expected: 'mass (g)' } },
    refused: 0,
  },
  {
    name: 'no column for the shelf',
    header: 'shoe,model,box,eu,on hand',
    lines: ['heron,Heron,h1,39,1'],
    finds: { code: 'stock-shelf-assumed', severity: 'note' },
    refused: 0,
  },
  {
    name: 'no column for the count',
    header: 'shoe,model,shelf,box,eu',
    lines: ['heron,Heron,any,h1,39'],
    finds: { code: 'stock-on-hand-assumed', severity: 'note' },
    refused: 0,
  },
  {
    name: 'letters in another encoding',
    lines: [GOOD, 'tern,K\uFFFDstentern,women,245,8,t1,39,A1,2'],
    finds: { code: 'stock-not-utf8', severity: 'note', line: 3 },
    refused: 0,
  },
  {
    name: 'a material nobody knows',
    header: 'shoe,model,box,eu,on hand,materials',
    lines: ['heron,Heron,h1,39,1,mesh | ledder'],
    finds: { code: 'stock-word-unknown', severity: 'note', line: 2, column: 'materials', value: 'ledder' },
    refused: 0,
  },
  {
    name: 'a formula for a name',
    lines: ['heron,=1+2,women,245,8,h1,39,A1,2'],
    finds: { code: 'stock-formula', severity: 'note', line: 2, value: '=1+2' },
    refused: 0,
  },
  {
    name: 'more put by than there are',
    header: 'shoe,model,box,eu,on hand,reserved',
    lines: ['heron,Heron,h1,39,1,2'],
    finds: { code: 'stock-reserved-over', severity: 'note', value: 'h1' },
    refused: 0,
  },
];

describe('a stock list with something wrong in it', () => {
  test.each(FAULTS)('$name: is found, said in words, and the good lines load', ({ header, lines, finds, refused }) => {
    const { value, findings } = read(header ?? HEADER, ...lines);
    expect(findings).toContainEqual(expect.objectContaining(finds));
    expect(refusedLines(findings)).toBe(refused);
    expect(value?.shoes.some((shoe) => shoe.id === 'heron')).toBe(true);
    for (const finding of findings) {
      for (const words of LANGUAGES) expect(said(words, finding)).not.toContain('{{');
    }
  });

  const HOPELESS: readonly [string, string, string][] = [
    ['an empty file', '', 'stock-empty'],
    ['nothing but spaces', ' \n\t\n', 'stock-empty'],
    ['a workbook', 'PK\u0003\u0004rest', 'stock-not-text'],
    ['a letter to the shop', 'Dear shop,\nplease find enclosed', 'stock-no-header'],
    ['a list without boxes', 'shoe,model\nheron,Heron', 'stock-column-missing'],
    ['a list whose every line is bad', `${HEADER}\nheron,Heron,women,heavy,8,h1,39,A1,2`, 'stock-nothing-loaded'],
  ];
  test.each(HOPELESS)('%s gives no stock and says why', (_, text, code) => {
    const { value, findings } = readStock(text, { asOf, file: 'list.csv' });
    expect(value).toBeUndefined();
    expect(findings.map((finding) => finding.code)).toContain(code);
    for (const finding of findings) {
      expect(finding.file).toBe('list.csv');
      for (const words of LANGUAGES) expect(said(words, finding)).not.toContain('{{');
    }
  });

  test('a file of fifty million letters is refused before it is read', () => {
    const { value, findings } = readStock('x'.repeat(50_000_000), { asOf });
    expect(value).toBeUndefined();
    expect(findings).toEqual([{ code: 'stock-too-large', severity: 'error', data: { most: LARGEST / 1e6 } }]);
    for (const words of LANGUAGES) expect(said(words, findings[0] as Finding)).toContain('25');
  });

  test('of a column that stands there twice, only the first is read', () => {
    const { value } = read(`${HEADER},weight`, `${GOOD},999`);
    expect(value?.shoes[0]?.numbers.mass).toBe(245);
    expect(value?.boxes[0]?.extra).toBeUndefined();
  });

  test('line numbers stay true past line breaks inside quotes', () => {
    const { value, findings } = read(
      HEADER,
      'heron,"Marsh\nHeron\nTall",women,245,8,h1,39,A1,2',
      'heron,,,,,h2,x,A1,1',
    );
    expect(value?.shoes[0]?.name).toBe('Marsh\nHeron\nTall');
    expect(findings).toEqual([expect.objectContaining({ code: 'stock-not-a-label', line: 5 })]);
  });

  test('a stray quotation mark spoils its own line, not the lines after it', () => {
    const { value, findings } = read(
      HEADER,
      GOOD,
      'tern,"Tern,women,245,8,t1,39,A1,2',
      'heron,,,,,h2,40,"A1",1',
      'heron,,,,,h3,bad,A1,1',
    );
    expect(value?.boxes.map((box) => box.id)).toEqual(['h1', 'h2']);
    expect(findings.map(({ code, line }) => [code, line])).toEqual([
      ['stock-row-quote', 3],
      ['stock-not-a-label', 5],
    ]);
  });

  test('one bad box does not take its model along', () => {
    const { value, findings } = read(HEADER, 'heron,Marsh Heron,women,245,8,h1,bad,A1,2', 'heron,,,,,h2,40,A1,1');
    expect(value?.boxes.map((box) => box.id)).toEqual(['h2']);
    expect(findings.map(({ code, line }) => [code, line])).toEqual([['stock-not-a-label', 2]]);
  });

  test('a name like an object’s own parts is only a name', () => {
    const { value } = read('shoe,model,box,eu,on hand,__proto__', 'constructor,toString,__proto__,39,1,polluted');
    expect(value?.shoes[0]).toMatchObject({ id: 'constructor', name: 'toString' });
    expect(value?.boxes[0]?.id).toBe('__proto__');
    expect(Object.hasOwn(value?.boxes[0]?.extra ?? {}, '__proto__')).toBe(true);
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });
});
