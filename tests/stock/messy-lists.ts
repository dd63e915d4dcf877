import fc from 'fast-check';
import { COLUMNS, type Column } from '../../src/stock/columns.ts';
import type { LabelSystem } from '../../src/stock/shoe.ts';

const GOOD_LABELS: Readonly<Record<LabelSystem, readonly string[]>> = {
  eu: ['42', '42 2/3', '42,5', '41⅓', '42 EE'],
  uk: ['8', '8.5', '8½', '8 1/2', '7,5 G'],
  'us-men': ['9', '9.5 D'],
  'us-women': ['9', '10,5'],
  'uk-child': ['13', '0'],
  'us-child': ['13.5', '1'],
  mondopoint: ['270', '270/103', '267.5'],
  cm: ['27', '27.5', '26,5'],
};

/** Cells that could stand in a column: mostly right, in many spellings. All invented. */
function likely({ field }: Column): fc.Arbitrary<string> {
  const odd = fc.constantFrom('8 mm', '250g', '€ 99,95', '1.250', '-0', '+3', '0,25', '007', '-9', '400');
  const number = (from: number, to: number, decimals: boolean) =>
    fc.oneof(
      { arbitrary: fc.integer({ min: from, max: to }).map(String), weight: 6 },
      {
        arbitrary: fc
          .tuple(fc.integer({ min: from, max: to - 1 }), fc.constantFrom(',5', '.25', '.0', ',00'))
          .map(([whole, part]) => (decimals ? `${whole}${part}` : String(whole))),
        weight: 3,
      },
      { arbitrary: odd, weight: 1 },
    );
  switch (field.part) {
    case 'id':
      return field.of === 'shoe'
        ? fc.constantFrom('heron', 'tern', 'Ibis 7', '=heron', "'=heron", '__proto__')
        : fc.oneof(
            fc.integer({ min: 0, max: 40 }).map((n) => `b${n}`),
            fc.string({ maxLength: 6 }),
          );
    case 'name':
    case 'place':
    case 'mass-size':
      return fc.constantFrom(
        'Heron',
        'A1',
        '<b>',
        '"quoted"',
        'two\nlines',
        ' spaced ',
        '-1',
        '@x',
        "'",
        "''=x",
        'eu 42',
      );
    case 'use':
      return fc.constantFrom('road', 'Road | trail', 'a,b;c', '=x | y');
    case 'shelf':
      return fc.constantFrom('men', 'Damen', 'any', 'KIDS');
    case 'width':
      return fc.constantFrom('wide', 'Extra Wide', 'normal');
    case 'label':
      return fc.oneof(
        { arbitrary: fc.constantFrom(...GOOD_LABELS[field.system]), weight: 8 },
        { arbitrary: fc.constantFrom('08. Feb', '½', '420', '42/3'), weight: 1 },
      );
    case 'attribute': {
      const { row } = field;
      if (row.kind === 'mark') return fc.constantFrom('yes', 'no', 'Ja', '0', 'x');
      if (row.kind === 'list') {
        const known = row.items.flatMap((item) => [item.id, ...item.aliases]);
        return fc
          .array(fc.oneof(fc.constantFrom(...known), fc.string({ maxLength: 5 })), { minLength: 1, maxLength: 4 })
          .chain((items) => fc.constantFrom(' | ', ';', ', ', '\n').map((between) => items.join(between)));
      }
      if (!row.anchors) return number(Math.ceil(row.accepted[0]), row.accepted[1], true);
      return fc.oneof(
        fc.integer(row.range[0] === 0 ? { min: 0, max: 2 } : { min: 1, max: 5 }).map(String),
        fc.constantFrom(...row.anchors),
      );
    }
    case 'size-offset':
      return number(-20, 20, true);
    case 'us-women-offset':
      return number(0, 3, true);
    case 'inner-length':
      return number(80, 380, true);
    default:
      return number(0, 12, false);
  }
}

const junk = fc.oneof(
  fc.string({ maxLength: 12 }),
  fc.string({ unit: 'binary', maxLength: 6 }),
  fc.constantFrom('"', '""', '\uFEFF', '\r', '\uFFFD', 'x'.repeat(130), '=1+1', '\t=1', "'@", ' '),
);

interface Messy {
  readonly text: string;
}

const strangeHeader = fc.oneof(
  fc.constantFrom('supplier', 'mass (oz)', '', '=cmd', '__proto__', 'column 3', 'note', 'note'),
  fc.string({ maxLength: 6 }),
);

/** Lists as shops send them: columns in any order and spelling, cells right, wrong or wild, quoted well or not. */
export const messyList: fc.Arbitrary<Messy> = fc
  .record({
    columns: fc.shuffledSubarray([...COLUMNS], { minLength: 0, maxLength: 9 }),
    strange: fc.array(strangeHeader, { maxLength: 2 }),
    delimiter: fc.constantFrom(',', ';', '\t'),
    newline: fc.constantFrom('\n', '\r\n', '\r'),
    always: fc.constantFrom(true, true, true, false),
    bom: fc.boolean(),
  })
  .chain(({ columns, strange, delimiter, newline, always, bom }) => {
    const needed = COLUMNS.filter(({ header }) => ['shoe', 'model', 'box', 'eu'].includes(header));
    const own = always ? [...new Set([...needed, ...columns])] : columns;
    const header = fc.tuple(...own.map((column) => fc.constantFrom(column.header, ...column.aliases)));
    const row = fc.tuple(
      ...own.map((column) =>
        fc.oneof(
          { arbitrary: likely(column), weight: 40 },
          { arbitrary: fc.constant(''), weight: 12 },
          { arbitrary: junk, weight: 1 },
        ),
      ),
      ...strange.map(() => junk),
    );
    const quote = (cell: string) => `"${cell.replaceAll('"', '""')}"`;
    const written = (cells: readonly string[], how: number) =>
      cells
        .map((cell) => (how === 0 ? cell : /["\n\r,;\t]/.test(cell) || how === 2 ? quote(cell) : cell))
        .join(delimiter);
    return fc
      .record({
        header,
        rows: fc.array(fc.tuple(row, fc.constantFrom(0, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 2)), { maxLength: 7 }),
        wild: fc.option(fc.string({ maxLength: 20 }), { freq: 20 }),
      })
      .map(({ header: names, rows, wild }) => ({
        text: [
          `${bom ? '\uFEFF' : ''}${written([...names, ...strange], 1)}`,
          ...rows.map(([cells, how]) => written(cells, how)),
          ...(wild === null ? [] : [wild]),
        ].join(newline),
      }));
  });
