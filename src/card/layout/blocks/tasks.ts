import type { CardText, TaskText } from '../../text/card-text.ts';
import { baseline, heading, lineHeight, type Pen, para, textMark } from '../pen.ts';
import { inColumns, type Piece, piece, shift } from '../piece.ts';
import { tickBox } from './drawings.ts';

const BOX = 3.6;

/** Try-on tasks with what to feel for, and a box to tick for each pair. */
export function tasksBlock(text: CardText, pen: Pen, width: number, columns: number): readonly Piece[] {
  const { gentle, moving, tick, letters, safety } = text.tasks;
  if (gentle.length + moving.length === 0) return [];
  const rows = (tasks: readonly TaskText[]) =>
    inColumns(
      columns,
      width,
      5,
      1.4,
      tasks.map((task) => (room: number) => taskPiece(task, letters, pen, room)),
    );
  return [
    heading(pen, text.tasks.heading, width),
    { ...para(pen, safety.join(' '), width, { size: pen.body }, 0.4), keep: true },
    ...rows(gentle),
    ...(tick ? [fitterTick(tick, pen, width)] : []),
    ...rows(moving),
  ];
}

function fitterTick(text: string, pen: Pen, width: number): Piece {
  const words = para(pen, text, width - BOX - 3, { size: pen.body, bold: true });
  const first = words.marks[0];
  const end = first && 'width' in first && words.marks.length === 1 ? first.width + 2 : width - BOX - 0.5;
  return {
    height: words.height,
    before: 1.8,
    keep: true,
    marks: [...words.marks, tickBox(end, (lineHeight(pen.body) - BOX) / 2, BOX)],
  };
}

function taskPiece(task: TaskText, letters: readonly string[], pen: Pen, width: number): Piece {
  const each = BOX + 6;
  const side = letters.length * each - 2;
  const beside = side < width * 0.5;
  const room = beside ? width - side - 1 : width;
  const name = para(pen, task.name, room, { size: pen.body, bold: true });
  const feel = para(pen, task.feel, width, { size: pen.body });
  const perRow = Math.max(1, Math.floor(width / each));
  const rows = beside ? 1 : Math.ceil(letters.length / perRow);
  const step = Math.max(lineHeight(pen.body), BOX + 0.8);
  const boxes = letters.flatMap((letter, index) => {
    const x = (beside ? width - side : 0) + (index % perRow) * each;
    const y = beside ? 0 : name.height + Math.floor(index / perRow) * step;
    return [
      textMark(pen, letter, x, y + baseline(pen.body), { size: pen.body, bold: true }),
      tickBox(x + 3.4, y + (lineHeight(pen.body) - BOX) / 2, BOX),
    ];
  });
  const top = beside ? Math.max(name.height, step) : name.height + rows * step;
  return piece(top + feel.height, [...name.marks, ...boxes, ...shift(feel.marks, 0, top - (beside ? 0.4 : 0))]);
}
