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

/**
 * Splits text into rows with true line numbers. Line breaks are `\n`. A stray quote spoils its own line, not the rest.
 *
 * @param each is told, with each row, which share of the text is behind it, 0 to 1.
 */
export function splitRows(
  text: string,
  delimiter: string,
  firstLine: number,
  each: (row: SplitRow, done: number) => void,
) {
  let line = firstLine;
  let from = 0;
  for (let stray = 0; from < text.length; stray++) {
    const start = from;
    let at = start;
    let again = false;
    papaparse.parse(text.slice(start), {
      delimiter,
      newline: '\n',
      fastMode: false,
      step: ({ data, errors, meta }, parser) => {
        const next = start + meta.cursor;
        const broken = errors.some((error) => error.type === 'Quotes');
        each({ cells: data, line, broken }, next / text.length);
        const end = text.indexOf('\n', at);
        if (broken && stray < MOST_STRAY_QUOTES && end >= 0 && end + 1 < next) {
          again = true;
          at = end + 1;
          line += 1;
          parser.abort();
          return;
        }
        line += countBreaks(text, at, next);
        at = next;
      },
    });
    if (!again) return;
    from = at;
  }
}

function countBreaks(text: string, from: number, to: number): number {
  let count = 0;
  for (let at = text.indexOf('\n', from); at >= 0 && at < to; at = text.indexOf('\n', at + 1)) count++;
  return count;
}

/** Where the first row ends: at the first line break outside quotes. */
export function firstRowEnd(text: string, from: number): number {
  let quoted = false;
  for (let at = from; at < text.length; at++) {
    if (text[at] === '"') quoted = !quoted;
    else if (text[at] === '\n' && !quoted) return at;
  }
  return text.length;
}
