import type { BenchText } from '../../text/card-text.ts';
import { heading, type Pen, para } from '../pen.ts';
import { type Piece, stack } from '../piece.ts';

/** Answers the fitter changed: the question, and below it what was said and what counts now. */
export function changesBlock({ changes }: BenchText, pen: Pen, width: number): readonly Piece[] {
  if (changes.items.length === 0) return [];
  const style = { size: pen.small };
  return [
    heading(pen, changes.heading, width),
    ...changes.items.map(({ ask, said }) =>
      stack([para(pen, ask, width, { ...style, bold: true }), para(pen, said, width, style)], 0.5),
    ),
  ];
}
