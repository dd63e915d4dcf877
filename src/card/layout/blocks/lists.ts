import type { CardText, ListText } from '../../text/card-text.ts';
import { heading, lineHeight, type Pen, para } from '../pen.ts';
import { balanced, inColumns, type Piece, shift } from '../piece.ts';
import { hand, handWidth } from './drawings.ts';

const ITEM_GAP = 0.5;

/** One item after a short dash. */
export function item(text: string, pen: Pen, width: number, size = pen.body): Piece {
  const left = 2.8;
  const body = para(pen, text, width - left, { size });
  const y = lineHeight(size) * 0.55;
  return {
    height: body.height,
    before: ITEM_GAP,
    marks: [{ kind: 'line', x1: 0, y1: y, x2: 1.7, y2: y, weight: 0.5, ink: 'ink' }, ...shift(body.marks, left, 0)],
  };
}

export function listBlock(list: ListText, pen: Pen, width: number, columns: number): readonly Piece[] {
  if (list.items.length === 0) return [];
  const items = list.items.map((text) => (room: number) => item(text, pen, room));
  return [heading(pen, list.heading, width), ...balanced(columns, width, 6, ITEM_GAP, items)];
}

/** Items of a list that make a paragraph: few enough to stand together at the foot of a column. */
const RUN = 4;

/** The same in a few paragraphs, for who knows it and wants the room. No item is parted between columns. */
export function runOn(list: ListText, pen: Pen, width: number): readonly Piece[] {
  if (list.items.length === 0) return [];
  const runs = Array.from({ length: Math.ceil(list.items.length / RUN) }, (_, at) =>
    list.items.slice(at * RUN, (at + 1) * RUN).join(' '),
  );
  return [heading(pen, list.heading, width), ...runs.map((run) => para(pen, run, width, { size: pen.body }, ITEM_GAP))];
}

/**
 * Cautions under the heading of their urgency. The three urgent levels stand behind a heavy rule with a hand held up;
 * a fitter's copy adds how well each is backed.
 */
export function cautionsBlock(text: CardText, pen: Pen, width: number, columns: number): readonly Piece[] {
  return text.cautions.flatMap((group) => {
    const urgent = group.level !== 'mind';
    const left = urgent ? 4 : 0;
    const items = group.items.map(
      ({ text: words, backing }) =>
        (room: number) =>
          item(backing ? `${words} (${backing})` : words, pen, room),
    );
    const rows = inColumns(columns, width - left, 6, ITEM_GAP, items);
    const head = urgent ? urgentHeading(group.heading, pen, width - left) : heading(pen, group.heading, width);
    if (!urgent) return [head, ...rows];
    return [head, ...rows].map((row, index) => ruled(row, left, index === 0 ? 0 : row.before));
  });
}

function urgentHeading(text: string, pen: Pen, width: number): Piece {
  const high = lineHeight(pen.heading);
  const left = handWidth(high) + 2;
  const words = para(pen, text, width - left, { size: pen.heading, bold: true }, 3);
  return {
    ...words,
    keep: true,
    height: Math.max(words.height, high),
    marks: [hand(0, 0, high * 0.95), ...shift(words.marks, left, 0)],
  };
}

/** A heavy rule down the side, joined to the one above. */
function ruled(row: Piece, left: number, above: number): Piece {
  return {
    ...row,
    marks: [
      { kind: 'line', x1: 0.6, y1: -above, x2: 0.6, y2: row.height, weight: 1.2, ink: 'ink' },
      ...shift(row.marks, left, 0),
    ],
  };
}
