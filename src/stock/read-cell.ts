import type { AttributeRow } from '../attributes/table.ts';
import { USE_WORDS } from '../attributes/uses.ts';
import type { Field } from './columns.ts';
import { readLabel } from './read-label.ts';
import { type NumberLimits, readNumber } from './read-number.ts';
import { readList, readWord, SHELF_WORDS, WIDTH_WORDS, YES_NO } from './read-words.ts';

export type CellValue = string | number | boolean | readonly string[];

/** What a cell holds, or the code of what is wrong with it and what was expected instead. */
export type Cell =
  | { readonly value: CellValue; readonly strange?: readonly string[] }
  | { readonly code: string; readonly data?: Readonly<Record<string, string | number>> };

/** Long enough for any name on a shoe box; longer is another column's text gone astray. */
const LONGEST = 120;

const LIMITS: Readonly<Partial<Record<Field['part'], NumberLimits>>> = {
  'size-offset': { from: -20, to: 20, unit: 'mm' },
  // 1 and 1.5 are published, 2 from memory; see sizing/systems/us-women.ts.
  'us-women-offset': { from: 0, to: 3 },
  'inner-length': { from: 80, to: 380, unit: 'mm' },
  'on-hand': { from: 0, to: 9999, whole: true },
  reserved: { from: 0, to: 9999, whole: true },
};

/** Reads a cell that is not blank, trimmed and free of the formula guard. */
export function readCell(field: Field, text: string): Cell {
  if (text.length > LONGEST) return { code: 'stock-too-long', data: { most: LONGEST } };
  switch (field.part) {
    case 'id':
    case 'name':
    case 'place':
    case 'mass-size':
      return { value: text };
    case 'use': {
      const { items, strange } = readList({ items: USE_WORDS }, text.toLowerCase());
      return { value: items, strange };
    }
    case 'shelf':
      return oneOf(SHELF_WORDS, text);
    case 'width':
      return oneOf(WIDTH_WORDS, text);
    case 'label': {
      const label = readLabel(field.system, text);
      return label === undefined ? { code: 'stock-not-a-label' } : { value: label };
    }
    case 'attribute':
      return readAttribute(field.row, text);
    default:
      return number(text, LIMITS[field.part] as NumberLimits);
  }
}

function readAttribute(row: AttributeRow, text: string): Cell {
  if (row.kind === 'mark') {
    const word = readWord(YES_NO, text);
    return word === undefined ? { code: 'stock-not-yes-no' } : { value: word === 'yes' };
  }
  if (row.kind === 'list') {
    const { items, strange } = readList(row, text);
    if (items.length === 0) return { code: 'stock-not-one-of', data: choices(row.items) };
    if (!row.open && strange.length > 0) return { code: 'stock-not-one-of', data: choices(row.items) };
    // Any colour is a colour; elsewhere a strange word may be a slip in one that a customer wants never to wear.
    return row.key === 'colour' ? { value: items } : { value: items, strange };
  }
  const [from, to] = row.accepted;
  if (row.anchors) {
    const anchor = row.anchors.indexOf(text.toLowerCase().replaceAll(' ', '-'));
    return anchor >= 0 ? { value: from + anchor } : number(text, { from, to, whole: true });
  }
  return number(text, { from, to, ...(row.unit === 'step' ? {} : { unit: row.unit }) });
}

function number(text: string, limits: NumberLimits): Cell {
  const read = readNumber(text, limits);
  return 'value' in read ? read : { ...read, data: { from: limits.from, to: limits.to } };
}

function oneOf(words: Parameters<typeof readWord>[0], text: string): Cell {
  const value = readWord(words, text);
  return value === undefined ? { code: 'stock-not-one-of', data: choices(words) } : { value };
}

const choices = (words: readonly { readonly id: string }[]) => ({ choices: words.map(({ id }) => id).join(', ') });
