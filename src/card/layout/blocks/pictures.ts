import type { CardText } from '../../text/card-text.ts';
import type { Mark } from '../mark.ts';
import { type Pen, para } from '../pen.ts';
import { beside, type Piece, piece, shift, stack } from '../piece.ts';

/** Width of one drawing, millimetres: its lines are then 0.28 thick, more than any printer's least. */
const PICTURE = 15;
const SHAPE = 96 / 160;
const GAP = 3;

/** Drawings of activity and floor, each over its words, side by side or one under the other. Nothing where there are none. */
export function picturesPiece(text: CardText, pen: Pen, width: number, across: boolean): Piece {
  const all = text.pictures;
  if (all.length === 0) return piece(0, []);
  const room = across ? (width - GAP * (all.length - 1)) / all.length : width;
  const cells = all.map(({ svg, says }) => {
    const high = PICTURE * SHAPE;
    const words = para(pen, says, room, { size: pen.small, align: 'middle' }, 0);
    const x = (room - PICTURE) / 2;
    const drawing: Mark = { kind: 'drawing', x, y: 0, width: PICTURE, height: high, svg, ink: 'ink' };
    return piece(high + 0.4 + words.height, [drawing, ...shift(words.marks, 0, high + 0.4)], 1.5);
  });
  if (!across) return stack(cells);
  return beside(cells.map((cell, at) => ({ x: at * (room + GAP), piece: cell })));
}
