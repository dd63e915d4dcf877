import type { CardText } from '../../text/card-text.ts';
import type { Mark } from '../mark.ts';
import { heading, NARROW, type Pen, para } from '../pen.ts';
import { beside, type Piece } from '../piece.ts';

/** Week by week as a small ruled table: a row for each pair, or on narrow paper a row for each stretch of weeks. */
export function easeInBlock(text: CardText, pen: Pen, width: number): readonly Piece[] {
  const { heading: says, why, caption, weeks, rows, rest } = text.easeIn;
  if (rows.length === 0) return [];
  const across = [weeks, ...rows];
  const table = width < NARROW ? weeks.map((_, at) => across.map((row) => row[at] ?? '')) : across;
  const body = { size: pen.body } as const;
  return [
    heading(pen, says, width),
    ...why.map((line) => para(pen, line, width, body, 0.5)),
    { ...para(pen, caption, width, body, 0.8), keep: true },
    // A table stays whole, or its columns would lose their heads.
    ...table.map((cells, at) => ({
      ...tableRow(cells, pen, width, at === 0),
      ...(at < table.length - 1 ? { keep: true as const } : {}),
    })),
    para(pen, rest, width, body, 1),
  ];
}

function tableRow(cells: readonly string[], pen: Pen, width: number, head: boolean): Piece {
  const first = Math.min(24, width * 0.3);
  const each = (width - first) / Math.max(1, cells.length - 1);
  const made = beside(
    cells.map((cell, at) => ({
      x: at === 0 ? 0 : first + (at - 1) * each,
      piece: para(pen, cell, (at === 0 ? first : each) - 2, { size: pen.body, bold: head || at === 0 }),
    })),
    head ? 0.8 : 0.4,
  );
  if (!head) return made;
  const y = made.height + 0.4;
  const rule: Mark = { kind: 'line', x1: 0, y1: y, x2: width, y2: y, weight: pen.hairline, ink: 'ink' };
  return { ...made, height: y + 0.2, marks: [...made.marks, rule], keep: true };
}
