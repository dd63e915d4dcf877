import type { CardText } from '../../text/card-text.ts';
import { heading, type Pen, para } from '../pen.ts';
import type { Piece } from '../piece.ts';
import { item, listBlock } from './lists.ts';

/** The fitter's part: every need with range, reasons, grades and sources. Nothing on a customer's copy. */
export function benchBlock(text: CardText, pen: Pen, width: number): readonly Piece[] {
  const { bench } = text;
  if (!bench) return [];
  return [
    heading(pen, bench.heading, width, 4),
    para(pen, bench.hold, width, { size: pen.body, bold: true }, 0.5),
    ...(bench.note ? [para(pen, bench.note, width, { size: pen.body }, 0.8)] : []),
    ...bench.needs.flatMap((need) => [
      { ...para(pen, `${need.name}: ${need.range}`, width, { size: pen.body, bold: true }, 1.8), keep: true as const },
      ...need.reasons.map((reason) => item(reason, pen, width, pen.small)),
    ]),
    ...listBlock(bench.musts, pen, width, 1),
    ...listBlock(bench.unknown, pen, width, 1),
    ...sources(text, pen, width),
  ];
}

function sources(text: CardText, pen: Pen, width: number): readonly Piece[] {
  const list = text.bench?.sources;
  if (!list || list.items.length === 0) return [];
  return [
    heading(pen, list.heading, width),
    ...list.items.map((source) => para(pen, source, width, { size: pen.small }, 0.8)),
  ];
}
