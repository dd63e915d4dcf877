import type { CardText } from '../../text/card-text.ts';
import type { Mark } from '../mark.ts';
import { baseline, NARROW, type Pen, para, widest } from '../pen.ts';
import { beside, type Piece, piece, shift, stack } from '../piece.ts';
import { hand, handWidth } from './drawings.ts';

/** The outcome in a few large words, what to do, and drawings of what the shoes are for. */
export function titleBlock(text: CardText, pen: Pen, width: number): readonly Piece[] {
  if (text.pictures.length === 0 || text.outcome === 'refer') return titleAlone(text, pen, width);
  const drawn = pictures(text.pictures, pen, width < NARROW ? width : width * 0.42);
  if (width < NARROW) return [...titleAlone(text, pen, width), { ...drawn, before: 1.5 }];
  const x = width - drawn.width;
  const said = stack(titleAlone(text, pen, x - 4));
  return [piece(Math.max(said.height, drawn.height), [...said.marks, ...shift(drawn.marks, x, 0)], 2)];
}

/** Width of one drawing, millimetres: its lines are then 0.28 thick, more than any printer's least. */
const PICTURE = 15;
const SHAPE = 96 / 160;

/** Drawings side by side, each over its words. */
function pictures(all: CardText['pictures'], pen: Pen, room: number): Piece & { readonly width: number } {
  const style = { size: pen.small, ink: 'soft', align: 'middle' } as const;
  const most = (room - 3 * (all.length - 1)) / all.length;
  const each = Math.min(
    most,
    Math.max(
      PICTURE,
      widest(
        pen,
        all.map((one) => one.says),
        style,
      ),
    ),
  );
  const high = PICTURE * SHAPE;
  const cells = all.map(({ svg, says }, at) => {
    const words = para(pen, says, each, style);
    const drawing: Mark = {
      kind: 'drawing',
      x: (each - PICTURE) / 2,
      y: 0,
      width: PICTURE,
      height: high,
      svg,
      ink: 'ink',
    };
    return {
      x: at * (each + 3),
      piece: piece(high + 0.4 + words.height, [drawing, ...shift(words.marks, 0, high + 0.4)]),
    };
  });
  return { ...beside(cells), width: each * all.length + 3 * (all.length - 1) };
}

/** A `refer` card holds up a hand beside its title. */
function titleAlone(text: CardText, pen: Pen, width: number): readonly Piece[] {
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
