import type { TableText } from '../../text/card-text.ts';
import type { Mark } from '../mark.ts';
import { heading, type Pen, para, widest } from '../pen.ts';
import { beside, type Piece, stack } from '../piece.ts';

/** Between two columns, millimetres. */
const GAP = 3;
/** The names of the rows take no more than this share of the width. */
const NAMES = 0.34;

/**
 * A table under its heading: so many columns side by side, and what does not go beside them in a further table below.
 * Each is kept together, so that no row parts from the names above it.
 */
export function tableBlock(table: TableText, pen: Pen, width: number, columns: number): readonly Piece[] {
  if (table.rows.length === 0) return [];
  const starts = Array.from({ length: Math.ceil(table.columns.length / columns) }, (_, at) => at * columns);
  return [
    heading(pen, table.heading, width),
    ...starts.map((from) => stack(part(table, from, from + columns, pen, width), from === 0 ? 0.4 : 2)),
    ...table.notes.map((note) => para(pen, note, width, { size: pen.small, ink: 'soft' }, 0.8)),
  ];
}

function part(table: TableText, from: number, to: number, pen: Pen, width: number): readonly Piece[] {
  const heads = table.columns.slice(from, to);
  const rows = table.rows
    .map(({ name, cells }) => ({ name, cells: cells.slice(from, to) }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''));
  const names = Math.min(
    width * NAMES,
    widest(
      pen,
      rows.map(({ name }) => name),
      { size: pen.small },
    ),
  );
  const each = (width - names) / heads.length - GAP;
  const row = (name: string, cells: readonly string[], bold: boolean): Piece => {
    const made = [name, ...cells].map((text, at) => ({
      x: at === 0 ? 0 : names + GAP + (at - 1) * (each + GAP),
      piece: para(pen, text, at === 0 ? names : each, { size: pen.small, bold, ink: at === 0 ? 'soft' : 'ink' }),
    }));
    const all = beside(made, 0.3);
    const y = all.height + 0.3;
    const rule: Mark = { kind: 'line', x1: 0, y1: y, x2: width, y2: y, weight: pen.hairline, ink: 'rule' };
    return { ...all, height: y, marks: [...all.marks, rule] };
  };
  return [row('', heads, true), ...rows.map(({ name, cells }) => row(name, cells, false))];
}
