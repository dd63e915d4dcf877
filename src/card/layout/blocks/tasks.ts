import type { CardText, TaskText } from '../../text/card-text.ts';
import type { Mark } from '../mark.ts';
import { baseline, heading, lineHeight, NARROW, type Pen, para, textMark, widest } from '../pen.ts';
import { type Piece, piece, shift } from '../piece.ts';
import { tickBox } from './drawings.ts';

const BOX = 3.6;
/** From one box to tick to the next. */
const STEP = BOX + 2.4;

/** Try-on tasks with what to feel for, and a box to tick for each pair. */
export function tasksBlock(text: CardText, pen: Pen, width: number): readonly Piece[] {
  const { gentle, moving, tick, letters, safety } = text.tasks;
  if (gentle.length + moving.length === 0) return [];
  const wide = width >= NARROW;
  const name = wide ? nameWidth([...gentle, ...moving], letters.length, pen, width) : 0;
  const rows = (tasks: readonly TaskText[]) =>
    tasks.map((task) =>
      wide ? taskRow(task, letters.length, pen, width, name) : taskPiece(task, letters, pen, width),
    );
  const safe = safety.join(' ');
  return [
    heading(pen, text.tasks.heading, width),
    { ...(wide ? lettered(safe, letters, pen, width) : para(pen, safe, width, { size: pen.body }, 0.4)), keep: true },
    ...rows(gentle),
    ...(tick ? [fitterTick(tick, pen, width)] : []),
    ...rows(moving),
  ];
}

/** Room for the names, at most half: whatever makes the table lowest. */
function nameWidth(tasks: readonly TaskText[], boxes: number, pen: Pen, width: number): number {
  const names = tasks.map((task) => task.name);
  const longest = Math.min(width / 2, widest(pen, names, { size: pen.body, bold: true }));
  const height = (room: number) => tasks.reduce((sum, task) => sum + taskRow(task, boxes, pen, width, room).height, 0);
  const rooms = [1, 0.85, 0.7, 0.55].map((share) => longest * share);
  return rooms.reduce((best, room) => (height(room) < height(best) - 0.1 ? room : best));
}

const boxesWidth = (count: number): number => count * STEP - 2.4;

/** What to mind, and at the end of its last line the letters that head the columns of boxes. */
function lettered(text: string, letters: readonly string[], pen: Pen, width: number): Piece {
  const side = boxesWidth(letters.length);
  const style = { size: pen.body, bold: true, align: 'middle' } as const;
  const words = para(pen, text, width - side - 3, { size: pen.body }, 0.4);
  const y = words.height - lineHeight(pen.body) + baseline(pen.body);
  return {
    ...words,
    marks: [
      ...words.marks,
      ...letters.map((letter, at) => textMark(pen, letter, width - side + at * STEP, y, style, BOX)),
    ],
  };
}

/** Name, what to feel for, boxes: one row of a table, ruled off below so that the eye keeps to it. */
function taskRow(task: TaskText, boxes: number, pen: Pen, width: number, nameRoom: number): Piece {
  const side = boxesWidth(boxes);
  const name = para(pen, task.name, nameRoom, { size: pen.body, bold: true });
  const feel = para(pen, task.feel, width - nameRoom - side - 6, { size: pen.body });
  const height = Math.max(name.height, feel.height, BOX + 0.4) + 0.6;
  const rule: Mark = { kind: 'line', x1: 0, y1: height, x2: width, y2: height, weight: pen.hairline, ink: 'rule' };
  const ticks = Array.from({ length: boxes }, (_, at) =>
    tickBox(width - side + at * STEP, Math.max(0.1, (lineHeight(pen.body) - BOX) / 2), BOX),
  );
  return piece(height + 0.15, [...name.marks, ...shift(feel.marks, nameRoom + 3, 0), ...ticks, rule], 0.5);
}

function fitterTick(text: string, pen: Pen, width: number): Piece {
  const words = para(pen, text, width - BOX - 3, { size: pen.body, bold: true });
  const first = words.marks[0];
  const end = first && 'width' in first && words.marks.length === 1 ? first.width + 2 : width - BOX - 0.5;
  return {
    height: words.height,
    before: 1.4,
    keep: true,
    marks: [...words.marks, tickBox(end, (lineHeight(pen.body) - BOX) / 2, BOX)],
  };
}

/** On narrow paper: the boxes beside or under the name, what to feel for below. */
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
  return piece(top + feel.height, [...name.marks, ...boxes, ...shift(feel.marks, 0, top - (beside ? 0.4 : 0))], 1.2);
}
