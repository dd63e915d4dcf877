import type { CardText, FetchBox } from '../../text/card-text.ts';
import { baseline, heading, lineHeight, type Pen, para, textMark } from '../pen.ts';
import { type Piece, piece, shift } from '../piece.ts';
import { letterDisc } from './letter.ts';

/** Boxes to fetch: the label to look for and the shelf, large enough to read at arm's length. */
export function boxesBlock(text: CardText, pen: Pen, width: number): readonly Piece[] {
  if (text.fetch.boxes.length === 0) {
    return [para(pen, text.fetch.none, width, { size: pen.heading, bold: true }, 2)];
  }
  return [heading(pen, text.fetch.heading, width, 2), ...text.fetch.boxes.map((box) => boxRow(box, pen, width))];
}

function boxRow(box: FetchBox, pen: Pen, width: number): Piece {
  const r = 3;
  const left = 2 * r + 2.5;
  const size = pen.fetch;
  const bold = { size, bold: true } as const;
  const shelf = textMark(pen, box.shelf, left, baseline(size), { ...bold, align: 'end' }, width - left);
  const shelfWidth = 'width' in shelf ? shelf.width : 0;
  const label = para(pen, box.label, width - left - shelfWidth - 3, bold);
  const small = [box.second, box.name, box.others].filter((part) => part).join(' · ');
  const rest = para(pen, small, width - left, { size: pen.small, ink: 'soft' });
  return piece(
    label.height + rest.height,
    [
      ...letterDisc(pen, box.letter, r, lineHeight(size) / 2, r),
      ...shift(label.marks, left, 0),
      shelf,
      ...shift(rest.marks, left, label.height - 0.3),
    ],
    1,
  );
}
