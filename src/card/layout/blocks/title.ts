import type { CardText } from '../../text/card-text.ts';
import { type Pen, para } from '../pen.ts';
import type { Piece } from '../piece.ts';
import { shift } from '../piece.ts';
import { hand, handWidth } from './drawings.ts';

/** The outcome in a few large words, and what to do. A `refer` card holds up a hand beside it. */
export function titleBlock(text: CardText, pen: Pen, width: number): readonly Piece[] {
  const stop = text.outcome === 'refer';
  const sign = stop ? handWidth(9) + 3 : 0;
  const title = para(pen, text.title, width - sign, { size: pen.title, bold: true }, 2);
  const head: Piece = stop
    ? { ...title, height: Math.max(title.height, 10), marks: [hand(0, 0.3, 9), ...shift(title.marks, sign, 1)] }
    : title;
  const lead = text.outcome === 'shortlist' ? pen.body : pen.body + 1;
  return [{ ...head, keep: true }, ...text.lead.map((line) => para(pen, line, width, { size: lead }, 1))];
}
