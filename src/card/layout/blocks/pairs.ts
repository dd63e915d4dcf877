import type { CardText, PairText } from '../../text/card-text.ts';
import { extent, type TextMark } from '../mark.ts';
import { baseline, heading, lineHeight, type Pen, para, textMark, widest } from '../pen.ts';
import { inColumns, type Piece, shift, stack } from '../piece.ts';
import { tick } from './drawings.ts';
import { letterDisc } from './letter.ts';

/**
 * The pairs with their reasons and misgivings, `most` of each, one less beside what all of the pairs share; what was
 * not recorded is always said.
 */
export function pairsBlock(text: CardText, pen: Pen, width: number, columns: number, most: number): readonly Piece[] {
  const pairs = text.lineUps.flatMap((lineUp) => {
    const across = Math.min(columns, Math.max(1, lineUp.pairs.length));
    const own = {
      reasons: lineUp.sharedReasons ? most - 1 : most,
      misgivings: lineUp.sharedMisgivings ? most - 1 : most,
    };
    return [
      ...(lineUp.heading ? [heading(pen, lineUp.heading, width)] : []),
      ...(lineUp.sharedReasons ? [{ ...ticked(lineUp.sharedReasons, pen, width), before: 1.5 }] : []),
      ...(lineUp.sharedMisgivings ? [afterBut(lineUp.but, lineUp.sharedMisgivings, pen, width)] : []),
      ...inColumns(
        across,
        width,
        4,
        2.5,
        lineUp.pairs.map((pair) => (room: number) => {
          // All of a row alike, so that what stands below starts at one height.
          const row = across > 1 ? lineUp.pairs : [pair];
          const beside = row.every((each) => hasRoomForPart(each, pen, room));
          return pairPiece(pair, pen, room, own, across === 1, beside);
        }),
      ),
      ...(across > 1 ? notRecorded(lineUp.pairs, pen, width) : []),
      ...lineUp.notes.map((note) => para(pen, note, width, { size: pen.body }, 1.5)),
    ];
  });
  return [...pairs, ...(text.musts ? [para(pen, text.musts, width, { size: pen.body }, 1.5)] : [])];
}

/** Under pairs that stand side by side: a line across is shorter than a list in one pair's column. */
function notRecorded(pairs: readonly PairText[], pen: Pen, width: number): readonly Piece[] {
  const said = pairs.flatMap(({ letter, unknown }) => (unknown ? [`${letter}\u00a0${unknown}`] : []));
  if (said.length === 0) return [];
  return [para(pen, said.join(' · '), width, { size: pen.body, ink: 'soft' }, 1)];
}

/** Letter and name. */
function topOf(pair: PairText, pen: Pen, width: number): Piece {
  const r = 3.2;
  const left = 2 * r + 2;
  const name = para(pen, pair.name, width - left, { size: pen.heading, bold: true });
  const step = lineHeight(pen.heading);
  return {
    height: Math.max(name.height, 2 * r),
    before: 0,
    marks: [
      ...letterDisc(pen, pair.letter, r, Math.max(r, step / 2), r),
      ...shift(name.marks, left, Math.max(0, r - step / 2)),
    ],
  };
}

const namesIn = (top: Piece, pen: Pen): readonly TextMark[] =>
  top.marks.filter((mark): mark is TextMark => mark.kind === 'text' && mark.size === pen.heading);

/** Whether what part the pair plays has room on its name's own line. */
function hasRoomForPart(pair: PairText, pen: Pen, width: number): boolean {
  const top = topOf(pair, pen, width);
  const end = Math.max(...top.marks.map((mark) => extent(mark).right)) + 3;
  const room = widest(pen, [pair.part], { size: pen.body });
  return width >= 60 && namesIn(top, pen).length === 1 && end + room <= width;
}

function pairPiece(
  pair: PairText,
  pen: Pen,
  width: number,
  most: Readonly<Record<'misgivings' | 'reasons', number>>,
  alone: boolean,
  partBeside: boolean,
): Piece {
  const top = topOf(pair, pen, width);
  const seam: Piece = {
    height: 0.4,
    before: 1,
    marks: [{ kind: 'line', x1: 0, y1: 0.2, x2: width, y2: 0.2, weight: 0.4, ink: 'thread', stitched: true }],
  };
  return stack([
    ...withPart(top, pair.part, pen, width, partBeside),
    seam,
    ...pair.reasons.slice(0, most.reasons).map((reason) => ticked(reason, pen, width)),
    ...pair.misgivings.slice(0, most.misgivings).map((misgiving) => afterBut(pair.but, misgiving, pen, width)),
    ...[...pair.notes, ...(alone && pair.unknown ? [pair.unknown] : [])].map((note) =>
      para(pen, note, width, { size: pen.body, ink: 'soft' }, 0.8),
    ),
  ]);
}

/** What part the pair plays: on the name's own line, or below. */
function withPart(top: Piece, part: string, pen: Pen, width: number, beside: boolean): readonly Piece[] {
  const style = { size: pen.body, ink: 'soft' } as const;
  if (!beside) return [top, para(pen, part, width, style, 0.6)];
  const y = namesIn(top, pen)[0]?.y ?? 0;
  return [{ ...top, marks: [...top.marks, textMark(pen, part, 0, y, { ...style, align: 'end' }, width)] }];
}

function ticked(text: string, pen: Pen, width: number): Piece {
  const size = 2.6;
  const left = size + 1.6;
  const body = para(pen, text, width - left, { size: pen.body });
  return {
    height: body.height,
    before: 0.8,
    marks: [tick(0, (lineHeight(pen.body) - size) / 2, size), ...shift(body.marks, left, 0)],
  };
}

function afterBut(but: string, text: string, pen: Pen, width: number): Piece {
  const word = textMark(pen, but, 0, baseline(pen.body), { size: pen.body, bold: true, ink: 'soft' });
  const left = ('width' in word ? word.width : 0) + 1.4;
  const body = para(pen, text, width - left, { size: pen.body });
  return { height: body.height, before: 0.8, marks: [word, ...shift(body.marks, left, 0)] };
}
