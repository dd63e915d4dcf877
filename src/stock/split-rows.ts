/// <reference path="./papaparse.d.ts" />
import papaparse from 'papaparse';

export interface SplitRow {
  readonly cells: readonly string[];
  /** First line it stands on, from 1, counting line breaks inside quotes. */
  readonly line: number;
  /** Its quotes do not close, or close in the middle of a cell. */
  readonly broken: boolean;
}

/** Each stray quote means reading on from the next line; beyond this many the rest of the file is given up. */
const MOST_STRAY_QUOTES = 50;

/** In characters. Text is read a piece at a time, so that a quote that never closes costs a piece and not the file. */
const PIECE = 500_000;

/**
 * Splits text into rows with true line numbers. Line breaks are `\n`. A stray quote spoils its own line, not the rest.
 *
 * @param each is told, with each row, which share of the text is behind it, 0 to 1; `false` for an answer ends it.
 */
export function splitRows(
  text: string,
  delimiter: string,
  firstLine: number,
  each: (row: SplitRow, done: number) => unknown,
) {
  let line = firstLine;
  let stray = 0;
  for (let from = 0; from < text.length; ) {
    const pieceEnd = text.indexOf('\n', from + PIECE) + 1 || text.length;
    const start = from;
    from = pieceEnd;
    let at = start;
    papaparse.parse(text.slice(start, pieceEnd), {
      delimiter,
      newline: '\n',
      fastMode: false,
      step: ({ data, errors, meta }, parser) => {
        const next = start + meta.cursor;
        const broken = errors.some((error) => error.type === 'Quotes');
        const cutOff = next >= pieceEnd && pieceEnd < text.length;
        if (broken && cutOff && at > start) {
          // Its quote may close in the next piece, which then begins with it.
          from = at;
          parser.abort();
          return;
        }
        if (each({ cells: data, line, broken }, next / text.length) === false) {
          from = text.length;
          parser.abort();
          return;
        }
        const end = text.indexOf('\n', at);
        if (broken && end >= 0 && end + 1 < next && stray < MOST_STRAY_QUOTES) {
          stray += 1;
          from = end + 1;
          line += 1;
          parser.abort();
          return;
        }
        line += countBreaks(text, at, next);
        at = next;
      },
    });
  }
}

function countBreaks(text: string, from: number, to: number): number {
  let count = 0;
  for (let at = text.indexOf('\n', from); at >= 0 && at < to; at = text.indexOf('\n', at + 1)) count++;
  return count;
}

/** Where the first row ends: at the first line break outside quotes. No answer when that is more than `most` characters on. */
export function firstRowEnd(text: string, from: number, most: number): number | undefined {
  let quoted = false;
  for (let at = from; at < text.length; at++) {
    if (at - from > most) return undefined;
    if (text[at] === '"') quoted = !quoted;
    else if (text[at] === '\n' && !quoted) return at;
  }
  return text.length;
}
