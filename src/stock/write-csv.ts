/// <reference path="./papaparse.d.ts" />
import papaparse from 'papaparse';
import type { Column } from './columns.ts';
import { COLUMNS } from './columns.ts';
import { guarded } from './formula.ts';
import { boxesByShoe } from './index-boxes.ts';
import type { Box, Shoe, Stock } from './shoe.ts';

export interface WriteOptions {
  /** What spreadsheets of the shop's country expect. */
  readonly delimiter?: ',' | ';' | '\t';
  readonly decimal?: '.' | ',';
  /** Write these even where nothing stands in them. */
  readonly columns?: readonly Column[];
}

const ALWAYS: readonly string[] = ['shoe', 'model', 'use', 'shelf', 'box', 'place', 'on hand', 'reserved'];

/**
 * A stock list as text, the pair of `readStock`: reading it gives the same stock back.
 *
 * One row is one box; the model's figures stand on its first row. Columns without any value are left out. Text that a
 * spreadsheet would run as a formula is guarded with an apostrophe.
 */
export function writeStock(stock: Stock, { delimiter = ',', decimal = '.', columns = [] }: WriteOptions = {}): string {
  const rows = rowsOf(stock);
  const used = COLUMNS.filter(
    (column) =>
      ALWAYS.includes(column.header) ||
      columns.includes(column) ||
      rows.some((row) => cell(column, row, decimal) !== ''),
  );
  const extra = [...new Set(rows.flatMap((row) => Object.keys(row.extra)))];
  const lines = rows.map((row) => [
    ...used.map((column) => cell(column, row, decimal)),
    ...extra.map((header) => guarded(Object.hasOwn(row.extra, header) ? (row.extra[header] ?? '') : '')),
  ]);
  const header = [...used.map((column) => column.header), ...extra.map(guarded)];
  return `${papaparse.unparse([header, ...lines], { delimiter, newline: '\n' })}\n`;
}

/** A line to write: a model with its figures or only by id, and perhaps a box. */
interface Line {
  readonly shoe: Shoe;
  readonly withFigures: boolean;
  readonly box?: Box;
  readonly extra: Readonly<Record<string, string>>;
}

function rowsOf(stock: Stock): readonly Line[] {
  const boxes = boxesByShoe(stock);
  return stock.shoes.flatMap((shoe): Line[] => {
    const own = boxes.get(shoe.id) ?? [];
    // A model's own extra columns need a row without a box to stand on.
    const alone: Line[] = shoe.extra || own.length === 0 ? [{ shoe, withFigures: true, extra: shoe.extra ?? {} }] : [];
    const boxed = own.map((box, at): Line => {
      return { shoe, withFigures: alone.length === 0 && at === 0, box, extra: box.extra ?? {} };
    });
    return [...alone, ...boxed];
  });
}

function cell({ field }: Column, { shoe, withFigures, box }: Line, decimal: string): string {
  if (field.of === 'box') {
    if (!box) return '';
    switch (field.part) {
      case 'id':
        return text(box.id);
      case 'label':
        return text(box.labels[field.system]);
      case 'inner-length':
        return number(box.innerLength, decimal);
      case 'width':
        return text(box.width);
      case 'place':
        return text(box.place);
      case 'on-hand':
        return number(box.onHand, decimal);
      case 'reserved':
        return number(box.reserved, decimal);
    }
  }
  if (field.part === 'id') return text(shoe.id);
  if (!withFigures) return '';
  switch (field.part) {
    case 'name':
      return text(shoe.name);
    case 'use':
      return list(shoe.use);
    case 'shelf':
      return shoe.shelf;
    case 'mass-size':
      return text(shoe.massSize);
    case 'size-offset':
      return number(shoe.sizeOffset, decimal);
    case 'us-women-offset':
      return number(shoe.usWomenOffset, decimal);
    case 'attribute': {
      const { row } = field;
      if (row.kind === 'mark') return shoe.marks[row.key] === undefined ? '' : shoe.marks[row.key] ? 'yes' : 'no';
      if (row.kind === 'list') return list(shoe.lists[row.key]);
      return number(shoe.numbers[row.key], decimal);
    }
  }
}

const text = (value: string | undefined): string => guarded(value ?? '');
const list = (value: readonly string[] | undefined): string => guarded((value ?? []).join(' | '));
const number = (value: number | undefined, decimal: string): string =>
  value === undefined ? '' : String(value).replace('.', decimal);
