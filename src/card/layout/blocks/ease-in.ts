import type { CardText } from '../../text/card-text.ts';
import { heading, type Pen, para } from '../pen.ts';
import { beside, type Piece } from '../piece.ts';

/** Week by week as a small ruled table, a column for each pair that asks for it. */
export function easeInBlock(text: CardText, pen: Pen, width: number): readonly Piece[] {
  const { columns, rows, why } = text.easeIn;
  if (rows.length === 0) return [];
  const first = Math.min(24, width * 0.22);
  const each = (width - first) / Math.max(1, columns.length - 1);
  const row = (cells: readonly string[], bold: boolean, before: number): Piece => {
    const made = beside(
      cells.map((cell, index) => ({
        x: index === 0 ? 0 : first + (index - 1) * each,
        piece: para(pen, cell, (index === 0 ? first : each) - 2, { size: pen.body, bold: bold || index === 0 }),
      })),
      before,
    );
    return {
      ...made,
      height: made.height + 0.6,
      marks: [
        ...made.marks,
        {
          kind: 'line',
          x1: 0,
          y1: made.height + 0.5,
          x2: width,
          y2: made.height + 0.5,
          weight: pen.hairline,
          ink: bold ? 'ink' : 'rule',
        },
      ],
    };
  };
  return [
    heading(pen, text.easeIn.heading, width),
    ...why.slice(0, -1).map((line) => para(pen, line, width, { size: pen.body }, 0.5)),
    { ...row(columns, true, 1), keep: true },
    ...rows.map((cells) => row(cells, false, 0.6)),
    ...why.slice(-1).map((line) => para(pen, line, width, { size: pen.body }, 1)),
  ];
}
