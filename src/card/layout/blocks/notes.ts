import type { CardText } from '../../text/card-text.ts';
import type { Mark } from '../mark.ts';
import { baseline, heading, lineHeight, type Pen, textMark } from '../pen.ts';
import { type Piece, piece } from '../piece.ts';
import { tickBox } from './drawings.ts';

/** From one line to write on to the next, millimetres. */
export const LINE_STEP = 8;

/** For the fitter's hand: the pair chosen, its size, and lines to write on. */
export function notesBlock(text: CardText, pen: Pen, width: number, lines = 2): readonly Piece[] {
  const size = pen.body;
  const [chosen = '', ...choices] = text.notes.choices;
  const head = heading(pen, text.notes.heading, width);
  if (choices.length === 0) return [head, ...writtenLines(text, pen, width, lines)];
  const marks: Mark[] = [textMark(pen, chosen, 0, baseline(size), { size, bold: true })];
  let x = widthOf(marks[0]) + 4;
  let y = 0;
  const step = lineHeight(size) + 1;
  for (const choice of choices) {
    const label = textMark(pen, choice, 0, 0, { size });
    const room = 3.6 + 1.2 + widthOf(label) + 5;
    if (x + room - 5 > width) {
      x = 0;
      y += step;
    }
    marks.push(tickBox(x, y + 0.5, 3.6), textMark(pen, choice, x + 4.8, y + baseline(size), { size }));
    x += room;
  }
  return [head, piece(y + step, marks, 1), ...writtenLines(text, pen, width, lines)];
}

function writtenLines(text: CardText, pen: Pen, width: number, lines: number): readonly Piece[] {
  const last = text.notes.lines.length - 1;
  return text.notes.lines.map((label, at) => writeLines(label, pen, width, at === last ? lines : 1));
}

function writeLines(label: string, pen: Pen, width: number, rows: number): Piece {
  const step = LINE_STEP;
  const word = textMark(pen, label, 0, step - 1, { size: pen.body });
  const rules = Array.from({ length: rows }, (_, index): Mark => {
    const y = step * (index + 1);
    return {
      kind: 'line',
      x1: index === 0 ? widthOf(word) + 2 : 0,
      y1: y,
      x2: width,
      y2: y,
      weight: pen.hairline,
      ink: 'rule',
    };
  });
  return piece(step * rows + 0.3, [word, ...rules]);
}

const widthOf = (mark: Mark | undefined): number => (mark?.kind === 'text' ? mark.width : 0);
