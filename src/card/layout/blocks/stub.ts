import type { Template } from '../../template.ts';
import type { CardText } from '../../text/card-text.ts';
import type { Mark } from '../mark.ts';
import { type Pen, para } from '../pen.ts';
import { type Piece, shift, stack } from '../piece.ts';
import { block } from './block.ts';
import { boxesBlock } from './boxes.ts';
import { codePiece } from './code.ts';
import { copySays, logoPiece } from './head.ts';
import { LINE_STEP, notesBlock } from './notes.ts';
import { picturesPiece } from './pictures.ts';

const PAD = 3;
const SIDE = PAD + 1;
const CORNER = 4.5;

/** The fitter's part, front: a manila tag with a punched hole, ticket, boxes to fetch and the code. */
export function stubFront(text: CardText, pen: Pen, width: number, template: Template, least: number): Piece {
  const code = codePiece(text.code, width * 0.3, template.code);
  const codeSays = para(pen, text.codeSays, code.height, { size: pen.small, align: 'middle' });
  const right = width - PAD - code.height;
  const left = PAD + 11;
  const half = (right - left - 4) / 2;
  const { head } = text;
  const ticket = stack([
    para(pen, head.ticketSays, half, { size: pen.small }),
    para(pen, head.ticket, half, { size: pen.ticket, bold: true }),
    para(pen, head.date, half, { size: pen.small }),
  ]);
  const logo = head.logo ? logoPiece(head.logo, half, 9) : undefined;
  const shop = stack([
    ...(logo ? [logo] : []),
    para(pen, head.shop, half, { size: pen.small + 1, bold: true }),
    para(pen, head.stock, half, { size: pen.small }),
  ]);
  const top = Math.max(ticket.height, shop.height) + 1;
  const boxes = stack(boxesBlock(text, pen, right - PAD - 4));
  const says = head.copySays ? copySays(head.copySays, pen, right - left - 4) : undefined;
  const down = PAD + (says ? says.height + 2 : 0);
  const beside = PAD + code.height + 1.4 + codeSays.height;
  // With boxes to fetch the drawings stand under the code, where there is room; without, under what stands for them.
  const fetching = text.fetch.boxes.length > 0;
  const at = fetching ? { x: right, y: beside } : { x: PAD, y: down + top + boxes.height };
  const without = Math.max(least, PAD + Math.max(down + top + boxes.height, beside));
  const drawn = mostThatFit(text.pictures, (pictures) => {
    const room = fetching ? code.height : right - PAD - 4;
    const made = picturesPiece({ ...text, pictures }, pen, room, !fetching);
    return fetching && at.y + made.height + PAD > without ? undefined : made;
  });
  const height = Math.max(without, PAD + at.y + drawn.height);
  const hole = { x: PAD + 4.5, y: PAD + 5 };
  return {
    height,
    before: 0,
    marks: [
      ...tagGround(width, height),
      { kind: 'disc', ...hole, r: 3.1, fill: 'paper', stroke: 'thread', weight: 1.1 },
      ...(says ? shift(says.marks, left, PAD) : []),
      ...shift(ticket.marks, left, down),
      ...shift(shop.marks, left + half + 4, down),
      ...shift(boxes.marks, PAD, down + top),
      ...shift(code.marks, right, PAD),
      ...shift(codeSays.marks, right, PAD + code.height + 0.6),
      ...shift(drawn.marks, at.x, at.y + 1),
    ],
  };
}

/** The drawings that do not make the tag any taller, the activity before the floor. */
function mostThatFit(all: CardText['pictures'], make: (pictures: CardText['pictures']) => Piece | undefined): Piece {
  for (let count = all.length; count > 0; count--) {
    const made = make(all.slice(0, count));
    if (made) return made;
  }
  return { height: 0, before: 0, marks: [] };
}

/** What the back of the fitter's part needs at least. */
export function stubBackHeight(text: CardText, pen: Pen, width: number, template: Template, lines = 1): number {
  const notes = notesBlock(text, pen, width - 2 * SIDE, lines);
  return stack([...backBlocks(text, pen, width, template), ...notes]).height + 2 * PAD;
}

/** The back of the fitter's part, filled up to a height: try-on tasks and lines to write on. */
export function stubBack(text: CardText, pen: Pen, width: number, height: number, template: Template): Piece {
  const above = backBlocks(text, pen, width, template);
  const inner = width - 2 * SIDE;
  const spare = height - stubBackHeight(text, pen, width, template);
  const lines = 1 + Math.max(0, Math.floor(spare / LINE_STEP));
  const all = stack([...above, ...notesBlock(text, pen, inner, lines)]);
  return { height, before: 0, marks: [...tagGround(width, height), ...shift(all.marks, SIDE, PAD)] };
}

const backBlocks = (text: CardText, pen: Pen, width: number, template: Template): readonly Piece[] =>
  (template.stub?.back ?? []).flatMap((row) => block(row, text, pen, width - 2 * SIDE, template));

/** A tag with two corners cut, open where the seam is. */
function tagGround(width: number, height: number): readonly Mark[] {
  const half = 0.2;
  const points = [
    [half, height],
    [half, CORNER],
    [CORNER, half],
    [width - CORNER, half],
    [width - half, CORNER],
    [width - half, height],
  ] as const;
  return [
    { kind: 'shape', points, closed: true, fill: 'tag' },
    { kind: 'shape', points, closed: false, stroke: 'thread', weight: 0.4 },
  ];
}

/** The seam to tear along, across the whole width. */
export const seam = (width: number, y: number): Mark => ({
  kind: 'line',
  x1: 0,
  y1: y,
  x2: width,
  y2: y,
  weight: 0.7,
  ink: 'thread',
  stitched: true,
});
