import type { BenchText, CardText } from '../../text/card-text.ts';
import { heading, lines, type Pen, para, widest } from '../pen.ts';
import { type Piece, piece, shift } from '../piece.ts';
import { listBlock } from './lists.ts';

/**
 * The fitter's part: every need with its range, each reason once, grades and sources. Nothing on a customer's copy.
 * Reasons stand on lines of their own, or run on where that saves a page.
 */
export function benchBlock(text: CardText, pen: Pen, width: number, ownLines: boolean): readonly Piece[] {
  const { bench } = text;
  if (!bench) return [];
  return [
    heading(pen, bench.heading, width, 4),
    para(pen, bench.hold, width, { size: pen.body, bold: true }, 0.5),
    ...(bench.cleared ? [para(pen, bench.cleared, width, { size: pen.body }, 0.5)] : []),
    ...(bench.note ? [para(pen, bench.note, width, { size: pen.body }, 0.8)] : []),
    ...needs(bench, pen, width),
    ...reasons(bench, pen, width, ownLines),
    ...listBlock(bench.musts, pen, width, 1),
    ...listBlock(bench.unknown, pen, width, 1),
    ...sources(bench, pen, width),
  ];
}

/** Name and range, and at the end of the row the numbers of what asks for it. */
function needs(bench: BenchText, pen: Pen, width: number): readonly Piece[] {
  const style = { size: pen.small };
  return bench.needs.map((need) => {
    const right = Math.min(width * 0.4, widest(pen, [need.why], style));
    const left = para(pen, `${need.name}: ${need.range}`, width - right - 3, { ...style, bold: true });
    const why = para(pen, need.why, right, { ...style, align: 'end' });
    return piece(Math.max(left.height, why.height), [...left.marks, ...shift(why.marks, width - right, 0)], 0.3);
  });
}

/** Each reason with its number, under the answer it is traced to. */
function reasons(
  { reasons: { heading: says, groups } }: BenchText,
  pen: Pen,
  width: number,
  ownLines: boolean,
): readonly Piece[] {
  if (groups.length === 0) return [];
  const style = { size: pen.small };
  const count = groups.reduce((sum, group) => sum + group.items.length, 0);
  const left = widest(pen, [`${count}`], { ...style, bold: true }) + 1.8;
  let at = 0;
  return [
    heading(pen, says, width),
    ...groups.flatMap(({ from, items }) => [
      { ...para(pen, from, width, { ...style, bold: true }, 0.8), keep: true as const },
      ...(ownLines ? [] : lines(pen, items.map((item) => `${++at}.\u00a0${item}`).join(' '), width, style)),
      ...(ownLines ? items : []).map((item) => {
        at++;
        const number = para(pen, `${at}`, left, style);
        const words = para(pen, item, width - left, style);
        return piece(words.height, [...number.marks, ...shift(words.marks, left, 0)], 0.2);
      }),
    ]),
  ];
}

/** Each on from the last, since nobody reads them in order. */
function sources({ sources: list }: BenchText, pen: Pen, width: number): readonly Piece[] {
  if (list.items.length === 0) return [];
  return [heading(pen, list.heading, width), ...lines(pen, list.items.join(' '), width, { size: pen.small })];
}
