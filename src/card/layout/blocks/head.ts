import type { CardText } from '../../text/card-text.ts';
import { type Pen, para } from '../pen.ts';
import { beside, type Piece, shift, stack } from '../piece.ts';

/** Shop, ticket and date. A fitter's copy says first whose it is. */
export function headBlock(text: CardText, pen: Pen, width: number): readonly Piece[] {
  const { head } = text;
  const left = width * 0.5;
  const ticket = stack([
    para(pen, head.ticketSays, left, { size: pen.small }),
    para(pen, head.ticket, left, { size: pen.ticket, bold: true }),
  ]);
  const shop = shopPiece(text, pen, width - left - 4);
  return [
    ...(head.copySays ? [copySays(head.copySays, pen, width)] : []),
    beside([
      { x: 0, piece: ticket },
      { x: left + 4, piece: shop },
    ]),
  ];
}

/** The fitter's copy says at its head that it is one, in a frame of its own. */
export function copySays(text: string, pen: Pen, width: number): Piece {
  const words = para(pen, text, width - 6, { size: pen.heading, bold: true });
  const height = words.height + 2.4;
  return {
    height,
    before: 0,
    marks: [
      {
        kind: 'box',
        x: 0.3,
        y: 0.3,
        width: width - 0.6,
        height: height - 0.6,
        stroke: 'ink',
        weight: 0.6,
        fill: 'paper',
      },
      ...shift(words.marks, 3, 1.2),
    ],
  };
}

export function shopPiece(text: CardText, pen: Pen, width: number): Piece {
  const { head } = text;
  const small = { size: pen.small };
  const logo = head.logo ? logoPiece(head.logo, Math.min(width, 30), 9) : undefined;
  return stack([
    ...(logo ? [logo] : []),
    para(pen, head.shop, width, { size: pen.small + 1, bold: true }),
    ...head.address.map((line) => para(pen, line, width, small)),
    ...(head.opening ? [para(pen, head.opening, width, small)] : []),
    para(pen, head.date, width, small),
    para(pen, head.stock, width, small),
  ]);
}

/** A logo in its own proportions, no wider and no higher than asked. */
export function logoPiece(svg: string, width: number, height: number): Piece {
  const [, w = '1', h = '1'] = /viewBox=["']\s*[-\d.]+[\s,]+[-\d.]+[\s,]+([\d.]+)[\s,]+([\d.]+)/.exec(svg) ?? [];
  const scale = Math.min(width / Number(w), height / Number(h));
  const drawn = { width: Number(w) * scale, height: Number(h) * scale };
  return { height: drawn.height + 1, before: 0, marks: [{ kind: 'logo', x: 0, y: 0, ...drawn, svg }] };
}
