import type { CardText, FootText, SizeText } from '../../text/card-text.ts';
import { baseline, heading, lineHeight, NARROW, type Pen, para, textMark, widest } from '../pen.ts';
import { type Piece, piece, shift, stack } from '../piece.ts';
import { foot } from './drawings.ts';

/** The size block, and where feet were measured their lengths: in a drawing of them, or in a line of words. */
export function sizeBlock(text: CardText, pen: Pen, width: number, drawn: boolean): readonly Piece[] {
  if (!text.size) return [];
  const size = drawn ? text.size : inWords(text.size);
  const drawing = size.foot ? feet(size.foot, pen, 18) : undefined;
  if (width < NARROW || !drawing) return plainSize(size, pen, width);
  const room = width - drawing.width - 5;
  const [head, ...said] = plainSize(withoutFoot(size), pen, room);
  const whole = stack([...(head ? [head] : []), ...said]);
  return [piece(Math.max(whole.height, drawing.height), [...whole.marks, ...shift(drawing.marks, room + 5, 0)], 3)];
}

const withoutFoot = ({ foot: _, ...size }: SizeText): SizeText => size;

/** The lengths as one more row, without the drawing. */
function inWords({ foot: measured, ...size }: SizeText): SizeText {
  const feet = [measured?.left, measured?.right].flatMap((each) => each ?? []);
  if (feet.length === 0) return size;
  const lengths = feet.map((each) => linesOf(each).join('\u00a0')).join(' · ');
  return { ...size, notes: [lengths, ...size.notes] };
}

const notesOf = ({ differs, notes }: SizeText): readonly string[] => [...(differs ? [differs] : []), ...notes];

/** Names beside values, then what is worth a note; the drawing last. */
function plainSize(size: SizeText, pen: Pen, width: number): readonly Piece[] {
  const drawing = size.foot ? feet(size.foot, pen, Math.min(18, width / 5)) : undefined;
  const names = size.rows.map((row) => row.name);
  const name = Math.min(widest(pen, names, { size: pen.body }) + 3, width * 0.47);
  const rows = size.rows.map((row): Piece => {
    const left = para(pen, row.name, name - 2, { size: pen.body, ink: 'soft' });
    const right = para(pen, row.value, width - name, { size: pen.body, bold: true });
    return piece(Math.max(left.height, right.height), [...left.marks, ...shift(right.marks, name, 0)], 0.5);
  });
  const said = [...rows, ...notesOf(size).map((note) => para(pen, note, width, { size: pen.body }, 0.8))];
  return [
    heading(pen, size.heading, width),
    // Few lines: they stay together, and the drawing with them.
    ...said.map((each, at) => (drawing || at < said.length - 1 ? { ...each, keep: true as const } : each)),
    ...(drawing ? [piece(drawing.height, shift(drawing.marks, (width - drawing.width) / 2, 0), 1.5)] : []),
  ];
}

/** Feet from above, each with its name and length to its right. */
function feet(drawn: NonNullable<SizeText['foot']>, pen: Pen, length: number): Piece & { readonly width: number } {
  const sides = (['left', 'right'] as const).flatMap((side) => {
    const said = drawn[side];
    return said ? [{ side, said }] : [];
  });
  const wide = length * 0.4;
  const words = widest(
    pen,
    sides.flatMap(({ said }) => linesOf(said)),
    { size: pen.small, bold: true },
  );
  const each = wide + 1.5 + words + 3;
  const step = lineHeight(pen.small);
  const marks = sides.flatMap(({ side, said }, index) => {
    const lines = linesOf(said);
    const top = Math.max(0, (length - lines.length * step) / 2);
    return [
      foot(side, each * index + wide / 2, 0.5, length),
      ...lines.map((line, at) =>
        textMark(pen, line, each * index + wide + 1.5, top + at * step + baseline(pen.small), {
          size: pen.small,
          bold: at === 1,
        }),
      ),
    ];
  });
  return { ...piece(length + 1, marks), width: each * sides.length - 3 };
}

const linesOf = (foot: FootText): readonly string[] => [foot.name, foot.length];
