import type { CardText } from '../../text/card-text.ts';
import { baseline, type Pen, para } from '../pen.ts';
import { type Piece, shift } from '../piece.ts';
import { hand, handWidth } from './drawings.ts';

/** The outcome in a few large words, and what to do. A `refer` card holds up a hand beside it. */
export function titleBlock(text: CardText, pen: Pen, width: number): readonly Piece[] {
  const stop = text.outcome === 'refer';
  const sign = stop ? handWidth(9) + 3 : 0;
  const title = para(pen, text.title, width - sign, { size: pen.title, bold: true }, 2);
  const head: Piece = stop
    ? { ...title, height: Math.max(title.height, 10), marks: [hand(0, 0.3, 9), ...shift(title.marks, sign, 1)] }
    : title;
  const size = text.outcome === 'shortlist' ? pen.body : pen.body + 1;
  const lead = text.lead.map((line) => para(pen, line, width, { size }, 1));
  return onOneLine(head, lead, pen, size, width) ?? [{ ...head, keep: true }, ...lead];
}

/** Title and lead on one line, where both are short. */
function onOneLine(
  head: Piece,
  lead: readonly Piece[],
  pen: Pen,
  size: number,
  width: number,
): readonly Piece[] | undefined {
  const [title, ...more] = head.marks;
  const [line] = lead.flatMap((each) => each.marks);
  if (title?.kind !== 'text' || line?.kind !== 'text' || more.length > 0 || lead.length > 1) return undefined;
  const x = title.width + 4;
  if ((lead[0]?.marks.length ?? 0) > 1 || x + line.width > width) return undefined;
  return [{ ...head, marks: [title, ...shift([line], x, baseline(pen.title) - baseline(size))] }];
}
