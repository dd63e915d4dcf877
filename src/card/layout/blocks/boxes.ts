import type { CardText, FetchBox } from '../../text/card-text.ts';
import type { Mark } from '../mark.ts';
import { baseline, heading, lineHeight, type Pen, para, textMark, widest } from '../pen.ts';
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
  // A shelf told in words goes on to further lines, so that the size keeps its room beside it.
  const shelfRoom = Math.min(widthOf(textMark(pen, box.shelf, 0, 0, bold)), (width - left) / 2);
  const shelf = para(pen, box.shelf, shelfRoom, { ...bold, align: 'end' });
  const room = width - left - shelfRoom - 3;
  const label = para(pen, box.label, room, bold);
  const then = box.next ? afterLabel(box.next, label, pen, room) : piece(0, []);
  const rest = para(pen, [box.name, box.others].filter((part) => part).join(' · '), width - left, {
    size: pen.small,
    ink: 'soft',
  });
  const top = Math.max(label.height, then.height, shelf.height);
  return piece(
    top + rest.height,
    [
      ...letterDisc(pen, box.letter, r, lineHeight(size) / 2, r),
      ...shift(label.marks, left, 0),
      ...shift(then.marks, left, 0),
      ...shift(shelf.marks, width - shelfRoom, 0),
      ...shift(rest.marks, left, top - 0.3),
    ],
    1,
  );
}

/** The second box, on the label's own line where it fits, else under it. */
function afterLabel(then: string, label: Piece, pen: Pen, room: number): Piece {
  const size = Math.max(pen.small, pen.fetch - 3);
  const x = widthOf(label.marks[0]) + 2.5;
  if (label.marks.length === 1 && x + widest(pen, [then], { size }) <= room) {
    const one = para(pen, then, room - x, { size });
    return piece(label.height, shift(one.marks, x, baseline(pen.fetch) - baseline(size)));
  }
  const under = para(pen, then, room, { size });
  return piece(label.height + under.height, shift(under.marks, 0, label.height));
}

const widthOf = (mark: Mark | undefined): number => (mark?.kind === 'text' ? mark.width : 0);
