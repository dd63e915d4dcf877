import type { CardText } from '../../text/card-text.ts';
import type { Mark } from '../mark.ts';
import { baseline, lineHeight, type Pen, textMark } from '../pen.ts';
import { type Piece, piece } from '../piece.ts';
import { tickBox } from './drawings.ts';

/** From one line to write on to the next, millimetres. */
export const LINE_STEP = 7.5;
const BOX = 3.6;

/** For the fitter's hand: a box for the pair chosen, its size, and lines to write on. */
export function notesBlock(text: CardText, pen: Pen, width: number, lines = 2): readonly Piece[] {
  const [sizeSays = '', noteSays = ''] = text.notes.lines;
  return [
    ...(text.notes.choices.length > 0 ? chosenLine(text.notes.choices, sizeSays, pen, width) : []),
    writeLines(noteSays, pen, width, lines),
  ];
}

/** Boxes to tick and, where there is room beside them, the line for the size. */
function chosenLine(says: readonly string[], sizeSays: string, pen: Pen, width: number): readonly Piece[] {
  const [chosen = '', ...choices] = says;
  const style = { size: pen.body };
  const marks: Mark[] = [textMark(pen, chosen, 0, baseline(pen.body), { ...style, bold: true })];
  const step = lineHeight(pen.body) + 1;
  let x = widthOf(marks[0]) + 3;
  let y = 0;
  for (const choice of choices) {
    const label = textMark(pen, choice, x + BOX + 1, y + baseline(pen.body), style);
    const room = BOX + 1 + widthOf(label);
    if (x + room > width) {
      x = 0;
      y += step;
    }
    marks.push(tickBox(x, y + (lineHeight(pen.body) - BOX) / 2, BOX));
    marks.push(textMark(pen, choice, x + BOX + 1, y + baseline(pen.body), style));
    x += room + 3.5;
  }
  const size = textMark(pen, sizeSays, x + 2, y + baseline(pen.body), style);
  const from = x + 2 + widthOf(size) + 2;
  if (width - from < 20) return [piece(y + step, marks, 2), writeLines(sizeSays, pen, width, 1)];
  const rule = y + baseline(pen.body) + 1;
  const line: Mark = { kind: 'line', x1: from, y1: rule, x2: width, y2: rule, weight: pen.hairline, ink: 'ink' };
  return [piece(y + step, [...marks, size, line], 2)];
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
      ink: 'ink',
    };
  });
  return piece(step * rows + 0.3, [word, ...rules]);
}

const widthOf = (mark: Mark | undefined): number => (mark?.kind === 'text' ? mark.width : 0);
