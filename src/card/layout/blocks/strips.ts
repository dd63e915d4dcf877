import type { Strip } from '../../card.ts';
import type { CardText, StripText } from '../../text/card-text.ts';
import { type Mark, POINT } from '../mark.ts';
import { baseline, heading, lineHeight, NARROW, type Pen, para, textMark, widest } from '../pen.ts';
import { type Piece, piece, shift } from '../piece.ts';
import { letterDisc } from './letter.ts';

/** Half the height of a letter's disc, millimetres: nine-point capitals fit inside. */
const R = 2.1;
const LEVEL = 2 * R + 0.4;
/** From one letter to the next in a mark that holds several. */
const LETTER = 2.9;

/** The tape measures, the first `most` of them, under a legend. */
export function stripsBlock(text: CardText, pen: Pen, width: number, most: number): readonly Piece[] {
  const rows = text.strips.rows.slice(0, most);
  if (rows.length === 0) return [];
  const columns = columnsOf(rows, pen, width);
  return [
    ...headAndLegend(text, pen, width),
    ...rows.map((row) => (width < NARROW ? narrowRow(row, pen, width) : wideRow(row, pen, width, columns))),
  ];
}

/** The legend beside the heading where there is room, else below it. */
function headAndLegend(text: CardText, pen: Pen, width: number): readonly Piece[] {
  const head = heading(pen, text.strips.heading, width);
  const [line] = head.marks;
  const x = line?.kind === 'text' ? line.width + 6 : width;
  const samples = legend(text, pen, width - x);
  const below = { ...legend(text, pen, width), keep: true as const };
  if (head.marks.length > 1 || samples.height > below.height || width < NARROW) return [head, below];
  const height = Math.max(head.height, samples.height);
  return [
    {
      ...head,
      height,
      marks: [
        ...shift(head.marks, 0, (height - head.height) / 2),
        ...shift(samples.marks, x, (height - samples.height) / 2),
      ],
    },
  ];
}

function legend(text: CardText, pen: Pen, width: number): Piece {
  const { band, pair, today } = text.strips.legend;
  const style = { size: pen.small, ink: 'soft' } as const;
  const step = Math.max(lineHeight(pen.small), 2 * R + 0.6);
  const middle = step / 2;
  const base = middle + pen.small * POINT * 0.25;
  const marks: Mark[] = [];
  let x = 0;
  let top = 0;
  const put = (sample: (x: number, y: number) => readonly Mark[], room: number, words: string) => {
    const label = textMark(pen, words, 0, 0, style);
    const wide = 'width' in label ? label.width : 0;
    if (x > 0 && x + room + wide > width) {
      x = 0;
      top += step;
    }
    marks.push(...sample(x, top + middle), ...shift([label], x + room, top + base));
    x += room + wide + 5;
  };
  put((at, y) => bandMarks(at, at + 9, y + 2.2, 4.4), 10.5, band);
  if (pair) put((at, y) => letterDisc(pen, 'A', at + R, y, R), 2 * R + 1.3, pair);
  if (today) put((at, y) => [ring(at + R, y)], 2 * R + 1.3, today);
  return piece(top + step, marks, 0.5);
}

const ring = (x: number, y: number): Mark => ({
  kind: 'disc',
  x,
  y,
  r: R - 0.25,
  stroke: 'ink',
  weight: 0.5,
  fill: 'paper',
});

function bandMarks(from: number, to: number, bottom: number, height: number): readonly Mark[] {
  return [
    {
      kind: 'box',
      x: from,
      y: bottom - height,
      width: Math.max(to - from, 0.8),
      height,
      fill: 'band',
      stroke: 'thread',
      weight: 0.4,
      stitched: true,
    },
  ];
}

interface Spot {
  readonly letters: readonly string[];
  readonly x: number;
  readonly half: number;
  readonly today: boolean;
}

/** What stands on a tape from left to right: pairs that measure the same share one mark, with all their letters. */
function spotsOf(strip: Strip, width: number): readonly Spot[] {
  const at = (share: number) => R + share * (width - 2 * R);
  const places = [...new Set(strip.pairs.map((pair) => pair.at))];
  const pairs = places.map((place): Spot => {
    const letters = strip.pairs.filter((pair) => pair.at === place).map((pair) => pair.letter);
    return { letters, x: at(place), half: R + ((letters.length - 1) * LETTER) / 2, today: false };
  });
  const today = strip.today === undefined ? [] : [{ letters: [], x: at(strip.today), half: R, today: true }];
  return [...pairs, ...today].sort((a, b) => a.x - b.x || Number(a.today) - Number(b.today));
}

/**
 * The tape itself, `width` long: ticks, band, ring and letters, its foot line at `height`. Marks that would touch are
 * stacked upwards, so the tape is as tall as it needs to be.
 */
export function tape(pen: Pen, strip: Strip, width: number): Piece {
  const taken: (readonly [number, number])[][] = [];
  const placed = spotsOf(strip, width).map((spot) => {
    // A wide mark at the end of the tape is moved in; its point still stands at the right place.
    const middle = Math.min(Math.max(spot.x, spot.half), width - spot.half);
    const [from, to] = [middle - spot.half - 0.4, middle + spot.half + 0.4];
    let level = 0;
    while (taken[level]?.some(([a, b]) => from + 0.4 < b && to - 0.4 > a)) level++;
    taken[level] = [...(taken[level] ?? []), [from, to]];
    return { ...spot, middle, level };
  });
  const levels = Math.max(1, taken.length);
  const height = levels * LEVEL + 0.8;
  const from = R + strip.band[0] * (width - 2 * R);
  const to = R + strip.band[1] * (width - 2 * R);
  const ticks = Array.from({ length: 21 }, (_, index): Mark => {
    const x = R + (index / 20) * (width - 2 * R);
    const rise = index % 5 === 0 ? 3.4 : 1.8;
    return { kind: 'line', x1: x, y1: height - rise, x2: x, y2: height, weight: pen.hairline, ink: 'rule' };
  });
  return piece(height + 0.3, [
    ...bandMarks(from, to, height, Math.min(height, LEVEL + 0.2)),
    ...ticks,
    { kind: 'line', x1: 0, y1: height, x2: width, y2: height, weight: 0.45, ink: 'ink' },
    ...placed.flatMap((spot): readonly Mark[] => {
      const y = height - 0.6 - R - spot.level * LEVEL;
      if (spot.today) return [ring(spot.x, y)];
      const [letter = '', ...more] = spot.letters;
      if (more.length === 0) return letterDisc(pen, letter, spot.x, y, R);
      return lettersBar(pen, spot.letters, spot, y);
    }),
  ]);
}

/** Several letters in one bar with round ends, and a point under it where they all stand. */
function lettersBar(
  pen: Pen,
  letters: readonly string[],
  { middle, half, x }: { readonly middle: number; readonly half: number; readonly x: number },
  y: number,
): readonly Mark[] {
  const steps = Array.from({ length: 9 }, (_, at) => (Math.PI * at) / 8 - Math.PI / 2);
  const right = steps.map((turn) => [middle + half - R + R * Math.cos(turn), y + R * Math.sin(turn)] as const);
  const left = steps.map((turn) => [middle - half + R - R * Math.cos(turn), y - R * Math.sin(turn)] as const);
  const point = [
    [x - 0.8, y + R - 0.2],
    [x + 0.8, y + R - 0.2],
    [x, y + R + 0.6],
  ] as const;
  const size = 9;
  return [
    { kind: 'shape', points: [...right, ...left], closed: true, fill: 'ink' },
    { kind: 'shape', points: point, closed: true, fill: 'ink' },
    ...letters.map((letter, at) =>
      textMark(
        pen,
        letter,
        middle - half + R - LETTER / 2 + at * LETTER,
        y + size * POINT * 0.334,
        { size, bold: true, ink: 'paper', align: 'middle' },
        LETTER,
      ),
    ),
  ];
}

interface StripColumns {
  readonly name: number;
  readonly low: number;
  readonly high: number;
  readonly end: number;
}

/** Columns as wide as their longest word, within bounds, so that the tape gets all the rest. */
function columnsOf(rows: readonly StripText[], pen: Pen, width: number): StripColumns {
  const longest = (texts: readonly string[], bold: boolean) => widest(pen, texts, { size: pen.small, bold }) + 0.4;
  const missing = rows.flatMap((row) => (row.missing ? [row.missing] : []));
  return {
    name: Math.min(
      0.24 * width,
      longest(
        rows.flatMap((row) => [row.name, row.figures ?? '']),
        true,
      ),
    ),
    low: Math.min(
      0.17 * width,
      longest(
        rows.map((row) => row.low),
        false,
      ),
    ),
    high: Math.min(
      0.17 * width,
      longest(
        rows.map((row) => row.high),
        false,
      ),
    ),
    end: missing.length > 0 ? Math.min(0.15 * width, longest(missing, false)) : 0,
  };
}

/** Name, low word, tape, high word, and what is not recorded, in one row. */
function wideRow(row: StripText, pen: Pen, width: number, columns: StripColumns): Piece {
  const gap = 2;
  const { name, low, high, end } = columns;
  const start = name + gap + low + gap;
  const tapeWidth = width - start - gap - high - (end > 0 ? gap + end : 0);
  const drawn = tape(pen, row.strip, tapeWidth);
  const small = { size: pen.small } as const;
  const soft = { ...small, ink: 'soft' } as const;
  const cells = [
    { x: 0, made: aligned(pen, [row.name, row.figures].filter(Boolean).join('\n'), name, { ...small, bold: true }) },
    { x: name + gap, made: aligned(pen, row.low, low, { ...soft, align: 'end' }) },
    { x: start + tapeWidth + gap, made: aligned(pen, row.high, high, soft) },
    ...(row.missing ? [{ x: width - end, made: aligned(pen, row.missing, end, { ...soft, align: 'end' }) }] : []),
  ];
  // All stand on the tape's foot line.
  const tallest = Math.max(drawn.height, ...cells.map(({ made }) => made.height));
  return piece(
    tallest,
    [
      ...cells.flatMap(({ x, made }) => shift(made.marks, x, tallest - made.height)),
      ...shift(drawn.marks, start, tallest - drawn.height),
    ],
    1.4,
  );
}

/** On narrow paper: the words of both ends and the name between them above the tape, what is not recorded below. */
function narrowRow(row: StripText, pen: Pen, width: number): Piece {
  const small = { size: pen.small } as const;
  const name = row.figures ? `${row.name} · ${row.figures}` : row.name;
  const ends = [row.low, row.high].map((words) => widest(pen, [words], small));
  const side = Math.max(...ends) + 2;
  const oneLine = widest(pen, [name], { ...small, bold: true }) <= width - 2 * side;
  const title = para(pen, name, oneLine ? width - 2 * side : width, { ...small, bold: true, align: 'middle' });
  const above = oneLine ? 0 : title.height;
  const base = above + baseline(pen.small);
  const top = above + lineHeight(pen.small);
  const drawn = tape(pen, row.strip, width);
  const missing = row.missing ? para(pen, row.missing, width, { ...small, align: 'end' }) : piece(0, []);
  return piece(
    top + drawn.height + missing.height,
    [
      ...shift(title.marks, oneLine ? side : 0, 0),
      textMark(pen, row.low, 0, base, small),
      textMark(pen, row.high, 0, base, { ...small, align: 'end' }, width),
      ...shift(drawn.marks, 0, top),
      ...shift(missing.marks, 0, top + drawn.height + 0.3),
    ],
    1.6,
  );
}

/** A paragraph, or several parted by line ends, each line set to its own side. */
function aligned(pen: Pen, text: string, room: number, style: Parameters<typeof para>[3]): Piece {
  let height = 0;
  const marks = text.split('\n').flatMap((part) => {
    const made = para(pen, part, room, style);
    const moved = shift(made.marks, 0, height);
    height += made.height;
    return moved;
  });
  return piece(height, marks);
}
