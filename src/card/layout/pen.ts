import type { Measure } from '../font/metrics.ts';
import type { Template } from '../template.ts';
import { ASCENT, type Ink, type Mark, moved, POINT } from './mark.ts';
import { type Piece, piece } from './piece.ts';
import { wrap } from './wrap.ts';

/** What blocks write with: type sizes as they stand at this try, and the widths of the font. */
export interface Pen {
  readonly measure: Measure;
  readonly body: number;
  readonly small: number;
  readonly heading: number;
  readonly title: number;
  readonly ticket: number;
  readonly fetch: number;
  readonly hairline: number;
  readonly ink: Template['ink'];
}

export function penOf(template: Template, measure: Measure, body: number): Pen {
  const { small, heading, title, ticket, fetch } = template.type;
  const ink = template.ink;
  return {
    measure,
    body,
    small: Math.min(small, body),
    heading,
    title,
    ticket,
    fetch,
    hairline: template.hairline,
    ink,
  };
}

/** Millimetres: a column or a roll narrower than this sets names above values and nothing side by side. */
export const NARROW = 100;

export interface Style {
  readonly size: number;
  readonly bold?: boolean;
  readonly ink?: Ink;
  readonly align?: 'start' | 'end' | 'middle';
}

/** From one baseline to the next, in type sizes. */
const LEADING = 1.16;
export const lineHeight = (size: number): number => size * POINT * LEADING;

/** Text in lines no wider than `width`. */
export function para(pen: Pen, text: string, width: number, style: Style, before = 0): Piece {
  const bold = style.bold ?? false;
  const step = lineHeight(style.size);
  const cut: string[] = [];
  const long = (line: string): number => pen.measure.width(line, bold) * style.size * POINT;
  const lines = text === '' ? [] : wrap(text, long, width, (word) => cut.push(word));
  const marks = lines.map((line, index) => ({
    ...textMark(pen, line, 0, index * step + baseline(style.size), { ...style, bold }, width),
    ...(cut[0] === undefined ? {} : { cut: cut[0] }),
  }));
  return piece(lines.length * step, marks, before);
}

/** Text that may go on to another column between any two of its lines. */
export function lines(pen: Pen, text: string, width: number, style: Style): readonly Piece[] {
  const step = lineHeight(style.size);
  return para(pen, text, width, style).marks.map((mark, at) => piece(step, [moved(mark, 0, -at * step)]));
}

/** Where the baseline lies in a line, from its top. */
export const baseline = (size: number): number => size * POINT * (ASCENT - (1.3 - LEADING) / 2);

/** One line of text with its baseline at `y`, from `x`, or ending at or centred in `x + room`. */
export function textMark(pen: Pen, text: string, x: number, y: number, style: Style, room = 0): Mark {
  const bold = style.bold ?? false;
  const width = pen.measure.width(text, bold) * style.size * POINT;
  const spare = style.align === 'end' ? room - width : style.align === 'middle' ? (room - width) / 2 : 0;
  return { kind: 'text', x: x + spare, y, width, text, size: style.size, bold, ink: style.ink ?? 'ink' };
}

/** Width of the longest of several lines of text. */
export const widest = (pen: Pen, texts: readonly string[], { size, bold = false }: Style): number =>
  Math.max(0, ...texts.map((text) => pen.measure.width(text, bold) * size * POINT)) + 0.1;

/** A heading with space above; stays with what follows. */
export function heading(pen: Pen, text: string, width: number, before = 2.5): Piece {
  return { ...para(pen, text, width, { size: pen.heading, bold: true }, before), keep: true };
}
