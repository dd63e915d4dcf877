import type { Reading } from '../units/result.ts';

/**
 * A sheet to measure a foot at home: a ruler along the paper's diagonal, so that a 310 mm foot fits, and a line that
 * shows whether the printer kept to size. All in millimetres, origin at the top left, y downwards.
 */
export interface MeasuringSheet {
  readonly paper: Paper;
  readonly width: number;
  readonly height: number;
  /** Where the heel goes, and the end of the ruler. */
  readonly ruler: { readonly heel: Point; readonly end: Point; readonly longest: number };
  readonly checkLine: { readonly from: Point; readonly to: Point };
  /** Everything to draw, in order. */
  readonly marks: readonly SheetMark[];
}

export type Paper = 'a4' | 'letter';
export type Point = readonly [x: number, y: number];
export type SheetMark =
  | { readonly kind: 'line'; readonly from: Point; readonly to: Point; readonly weight: number }
  /** `say` is a key of the words under `observation.sheet`; `number` is printed as it is. Centred on `at`, turned by degrees. */
  | { readonly kind: 'text'; readonly at: Point; readonly size: number; readonly turn: number; readonly say: string }
  | {
      readonly kind: 'number';
      readonly at: Point;
      readonly size: number;
      readonly turn: number;
      readonly number: number;
    };

/** ISO 216 A4, and US Letter (8.5 by 11 in). */
export const PAPERS: Readonly<Record<Paper, readonly [width: number, height: number]>> = {
  a4: [210, 297],
  letter: [215.9, 279.4],
};
/** Kept free of print: desktop printers leave up to about 6 mm white at the edges (common practice). */
export const SHEET_MARGIN = 8;
/** The ruler's far end; the longest foot it must take is 310 mm. */
const LONGEST = 320;
/** Below this a reading is no foot: the ruler's ticks start here and leave the heel end clear. */
const SHORTEST = 80;
/** The line whose printed length the person enters. */
export const CHECK_LINE = 100;
/** Past this share the paper was scaled or fed askew, and a correction would be a guess (common practice). */
const MOST_OFF = 0.05;

/**
 * The sheet's geometry for one paper.
 *
 * @example measuringSheet('a4').ruler.longest // 320
 */
export function measuringSheet(paper: Paper): MeasuringSheet {
  const [width, height] = PAPERS[paper];
  const across = width - 2 * SHEET_MARGIN;
  const down = height - 2 * SHEET_MARGIN;
  const diagonal = Math.hypot(across, down);
  const along: Point = [across / diagonal, -down / diagonal];
  const side: Point = [-along[1], along[0]];
  // The ruler sits in the middle of the diagonal, heel at the lower left.
  const start = (diagonal - LONGEST) / 2;
  const on = (distance: number, aside = 0): Point => [
    SHEET_MARGIN + (start + distance) * along[0] + aside * side[0],
    height - SHEET_MARGIN + (start + distance) * along[1] + aside * side[1],
  ];
  const turn = (Math.atan2(along[1], along[0]) * 180) / Math.PI;
  const checkLine = {
    from: [width - SHEET_MARGIN - CHECK_LINE - 4, height - SHEET_MARGIN - 12] as Point,
    to: [width - SHEET_MARGIN - 4, height - SHEET_MARGIN - 12] as Point,
  };
  return {
    paper,
    width,
    height,
    ruler: { heel: on(0), end: on(LONGEST), longest: LONGEST },
    checkLine,
    marks: [...rulerMarks(on, turn), ...checkMarks(checkLine), ...sheetWords(width, height)],
  };
}

function rulerMarks(on: (distance: number, aside?: number) => Point, turn: number): readonly SheetMark[] {
  const marks: SheetMark[] = [
    { kind: 'line', from: on(0), to: on(LONGEST), weight: 0.3 },
    // The heel line is square to the ruler, as far as the corner allows.
    { kind: 'line', from: on(0, -5), to: on(0, 5), weight: 0.8 },
  ];
  for (let at = SHORTEST; at <= LONGEST; at += 1) {
    const long = at % 10 === 0 ? 5 : at % 5 === 0 ? 3.5 : 2;
    marks.push({ kind: 'line', from: on(at), to: on(at, long), weight: at % 10 === 0 ? 0.3 : 0.15 });
    if (at % 10 === 0)
      marks.push({ kind: 'number', at: on(at, at > LONGEST - 10 ? -4 : 9), size: 3.2, turn, number: at });
  }
  marks.push({ kind: 'text', at: on(SHORTEST - 30, 6), size: 4, turn, say: 'heel-here' });
  return marks;
}

function checkMarks(line: MeasuringSheet['checkLine']): readonly SheetMark[] {
  const ends = [line.from, line.to].map(
    ([x, y]): SheetMark => ({ kind: 'line', from: [x, y - 3], to: [x, y + 3], weight: 0.2 }),
  );
  const middle: Point = [(line.from[0] + line.to[0]) / 2, line.from[1] + 7];
  return [
    { kind: 'line', from: line.from, to: line.to, weight: 0.2 },
    ...ends,
    { kind: 'text', at: middle, size: 4, turn: 0, say: 'check-line' },
  ];
}

/** The steps, in the empty upper left half. */
function sheetWords(width: number, height: number): readonly SheetMark[] {
  const steps = ['title', 'step-print', 'step-stand', 'step-mark', 'step-other', 'step-enter'];
  return steps.map((say, index) => ({
    kind: 'text',
    at: [width * 0.31, height * 0.06 + index * 8],
    size: say === 'title' ? 6 : 4,
    turn: 0,
    say,
  }));
}

/**
 * A reading off the sheet as it was printed, corrected by what the check line measures on the paper.
 *
 * Refused past 5 %: then the sheet should be printed again at full size. Every other reading is corrected; from half a
 * millimetre on the check line a note says so.
 *
 * @example correctedReading(270, 97) // value 261.9, note sheet-corrected
 * @example correctedReading(270, 94) // finding sheet-not-to-size
 */
export function correctedReading(reading: number, checkLine: number): Reading<number> {
  const scale = checkLine / CHECK_LINE;
  if (!(Math.abs(scale - 1) <= MOST_OFF + 1e-9)) {
    return {
      findings: [
        {
          code: 'sheet-not-to-size',
          severity: 'error',
          value: String(checkLine),
          data: { mm: checkLine, want: CHECK_LINE },
        },
      ],
    };
  }
  const value = Math.round(reading * scale * 10) / 10;
  if (Math.abs(checkLine - CHECK_LINE) < 0.5) return { value, findings: [] };
  return { value, findings: [{ code: 'sheet-corrected', severity: 'note', data: { read: reading, mm: value } }] };
}
