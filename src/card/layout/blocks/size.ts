import type { CardText, SizeText } from '../../text/card-text.ts';
import { baseline, heading, lineHeight, type Pen, para, textMark } from '../pen.ts';
import { type Piece, piece, shift, stack } from '../piece.ts';
import { foot } from './drawings.ts';

/** The size block, and where both feet were measured a drawing of them with the lengths. */
export function sizeBlock(text: CardText, pen: Pen, width: number): readonly Piece[] {
  const { size } = text;
  if (!size) return [];
  if (width < 100) return narrowSize(size, pen, width);
  const drawing = size.foot ? feet(size.foot, pen) : undefined;
  const room = drawing ? width - drawing.width - 5 : width;
  const name = Math.min(38, room * 0.42);
  const rows = size.rows.map((row): Piece => {
    const left = para(pen, row.name, name - 2, { size: pen.body, ink: 'soft' });
    const right = para(pen, row.value, room - name, { size: pen.body, bold: true });
    return piece(Math.max(left.height, right.height), [...left.marks, ...shift(right.marks, name, 0)], 0.5);
  });
  const notes = size.notes.map((note) => para(pen, note, room, { size: pen.body }, 0.8));
  const head = heading(pen, size.heading, width);
  if (!drawing) return [head, ...rows, ...notes];
  const said = stack([head, ...rows, ...notes]);
  return [piece(Math.max(said.height, drawing.height), [...said.marks, ...shift(drawing.marks, room + 5, 0)], 3)];
}

/** On narrow paper: names above values, the drawing last. */
function narrowSize(size: SizeText, pen: Pen, width: number): readonly Piece[] {
  const drawing = size.foot ? feet(size.foot, pen) : undefined;
  return [
    heading(pen, size.heading, width),
    ...size.rows.flatMap((row) => [
      { ...para(pen, row.name, width, { size: pen.body, ink: 'soft' }, 0.8), keep: true as const },
      para(pen, row.value, width, { size: pen.body, bold: true }),
    ]),
    ...size.notes.map((note) => para(pen, note, width, { size: pen.body }, 0.8)),
    ...(drawing ? [piece(drawing.height, shift(drawing.marks, (width - drawing.width) / 2, 0), 1.5)] : []),
  ];
}

function feet(drawn: NonNullable<SizeText['foot']>, pen: Pen): Piece & { readonly width: number } {
  const length = 18;
  const each = 19;
  const step = lineHeight(pen.small);
  const sides = (['left', 'right'] as const).flatMap((side) => {
    const said = drawn[side];
    return said ? [{ side, said }] : [];
  });
  const marks = sides.flatMap(({ side, said }, index) => {
    const middle = each * index + each / 2;
    const lines = [said.name, said.length, ...(said.ball ? [said.ball] : [])];
    return [
      foot(side, middle, 0.5, length),
      ...lines.flatMap((line, at) =>
        at < 2
          ? [
              textMark(
                pen,
                line,
                each * index,
                length + 1.5 + at * step + baseline(pen.small),
                { size: pen.small, bold: at === 1, align: 'middle' },
                each,
              ),
            ]
          : [],
      ),
    ];
  });
  return { ...piece(length + 1.5 + 2 * step, marks), width: each * sides.length };
}
