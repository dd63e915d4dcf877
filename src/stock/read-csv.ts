import type { Finding, Reading } from '../units/result.ts';
import { assemble } from './assemble.ts';
import { NEEDED } from './columns.ts';
import { EXAMPLE_ID, EXAMPLE_NAME } from './example.ts';
import { withoutHidden } from './hidden.ts';
import { countKnown, readHeader } from './read-header.ts';
import { type ReadRow, readRow } from './read-row.ts';
import type { Stock } from './shoe.ts';
import { firstRowEnd, type SplitRow, splitRows } from './split-rows.ts';

export interface ReadOptions {
  /** When the list was made or loaded: ISO date and time, local. */
  readonly asOf: string;
  /** File name, for findings. */
  readonly file?: string;
  /** Told now and then which share is read, 0 to 1; for a worker to pass on. */
  readonly progress?: (done: number) => void;
}

/** In characters. 5,000 models in 60,000 boxes take about 7 million; a file this large is something else, or many years' lists. */
export const LARGEST = 25_000_000;

/** In characters, and in columns that hold something: the template has 55, in 700 characters. Our choice. */
const LONGEST_HEADER = 2_000_000;
const MOST_COLUMNS = 500;

/** Lines, and findings. The largest shop has 60,000 boxes; of what is wrong half a million times over nothing is right. Our choice. */
const MOST = 500_000;

/** Lines between two reports of progress. */
const REPORT_EVERY = 1000;

/**
 * Reads a stock list: UTF-8 text, one line a box, cells between commas, semicolons or tabs, decimal point or comma,
 * columns in any order. Never throws: what is wrong comes back as findings with line, column, value and what was expected.
 *
 * A line with an error is refused; the others load. What is blank stays unknown, never zero and never an average. No
 * stock at all when the text is no stock list or when every line was refused.
 */
export function readStock(text: string, options: ReadOptions): Reading<Stock> {
  const { asOf, file, progress } = options;
  const named = (findings: readonly Finding[]) =>
    file === undefined ? findings : findings.map((one) => ({ ...one, file }));
  const refused = (code: string, more: Partial<Finding> = {}): Reading<Stock> => ({
    findings: named([{ code, severity: 'error', ...more }]),
  });
  if (text.length > LARGEST) return refused('stock-too-large', { data: { most: LARGEST / 1e6 } });
  // A workbook is a zip file, and says so in its first letters.
  if (text.startsWith('PK\u0003\u0004')) return refused('stock-not-text');

  const plain = text.replaceAll('\uFEFF', '').replaceAll(/\r\n?/g, '\n');
  const start = headerStart(plain);
  if (plain.slice(start).trim() === '') return refused('stock-empty');
  const end = firstRowEnd(plain, start, LONGEST_HEADER) ?? plain.length;
  const first = plain.slice(start, Math.min(end, start + LONGEST_HEADER));
  const line = 1 + breaks(plain.slice(0, start));
  const value = withoutHidden(first.slice(0, 60));
  // Saved as "Unicode text", every other byte of plain letters is a zero.
  if (first.includes('\0')) return refused('stock-not-text');
  const header = delimited(first);
  if (!header) return refused('stock-no-header', { line, value });
  if (header.broken) return refused('stock-row-quote', { line, value });
  if (header.cells.length > MOST_COLUMNS)
    return refused('stock-too-many-columns', { line, data: { most: MOST_COLUMNS } });

  const { columns, findings: columnFindings } = readHeader(header.cells, line);
  const findings: Finding[] = [...columnFindings];
  const has = (name: string) => columns.some(({ column }) => column?.header === name);
  const missing = NEEDED.filter((name) => !has(name));
  if (missing.length > 0) {
    findings.push(
      ...missing.map((column): Finding => ({ code: 'stock-column-missing', severity: 'error', line, column })),
    );
    return { findings: named(findings) };
  }
  if (!has('shelf')) findings.push({ code: 'stock-shelf-assumed', severity: 'note', line, column: 'shelf' });
  const countless = !has('on hand');
  if (countless) findings.push({ code: 'stock-on-hand-assumed', severity: 'note', line, column: 'on hand' });
  const wrong = plain.indexOf('\uFFFD');
  if (wrong >= 0) findings.push({ code: 'stock-not-utf8', severity: 'note', line: 1 + breaks(plain.slice(0, wrong)) });

  const rows: ReadRow[] = [];
  let count = 0;
  let givenUp: number | undefined;
  splitRows(plain.slice(end + 1), header.delimiter, line + breaks(plain.slice(start, end)) + 1, (row, done) => {
    if (row.cells.every((cell) => cell.trim() === '')) return;
    if (count >= MOST || findings.length >= MOST) {
      givenUp = row.line;
      return false;
    }
    const read = readRow(row, columns);
    for (const finding of read.findings) findings.push(finding);
    if (!read.refused || read.defines) rows.push(countless ? counted(read) : read);
    if (++count % REPORT_EVERY === 0) progress?.(done);
  });
  if (givenUp !== undefined) return refused('stock-no-end', { line: givenUp });
  const { shoes, boxes, findings: assembled } = assemble(rows);
  for (const finding of assembled) findings.push(finding);
  // Loaded all the same: somebody may be trying the list out.
  if (shoes.some(({ id, name }) => id === EXAMPLE_ID && name === EXAMPLE_NAME)) {
    const at = rows.find(({ values }) => values.get('shoe') === EXAMPLE_ID)?.line;
    findings.push({
      code: 'stock-example-lines',
      severity: 'note',
      ...(at === undefined ? {} : { line: at }),
      value: EXAMPLE_NAME,
    });
  }
  progress?.(1);
  if (shoes.length === 0) findings.push({ code: 'stock-nothing-loaded', severity: 'error' });
  const sorted = named(findings.toSorted((a, b) => (a.line ?? 0) - (b.line ?? 0)));
  return shoes.length === 0 ? { findings: sorted } : { value: { shoes, boxes, asOf }, findings: sorted };
}

/** Past blank lines, and past the line some spreadsheets write first to name their delimiter. */
function headerStart(text: string): number {
  const start = lineStart(text, text.search(/\S/));
  const named = /^[^\S\n]*"?sep=.[^\n]*(?:\n|$)/i.exec(text.slice(start, start + 100))?.[0];
  if (named === undefined) return start;
  const after = start + named.length;
  const more = text.slice(after).search(/\S/);
  return more < 0 ? text.length : lineStart(text, after + more);
}

/** Where the line begins that holds a place; a text without one has its header at its end. */
const lineStart = (text: string, at: number): number => (at < 0 ? text.length : text.lastIndexOf('\n', at) + 1);

interface Header {
  readonly delimiter: string;
  readonly cells: readonly string[];
  /** A quote in it does not close. */
  readonly broken: boolean;
}

/** The delimiter that makes most sense of the header, and the header's cells. No answer when none does. */
function delimited(header: string): Header | undefined {
  const candidates = [',', ';', '\t'].map((delimiter) => {
    const rows: SplitRow[] = [];
    splitRows(header, delimiter, 1, (row) => rows.push(row));
    const cells = rows[0]?.cells ?? [];
    const used = cells.slice(0, cells.findLastIndex((cell) => cell.trim() !== '') + 1);
    return { delimiter, cells: used, broken: rows[0]?.broken ?? false, known: countKnown(used.slice(0, MOST_COLUMNS)) };
  });
  const best = candidates.reduce((a, b) => (b.known > a.known ? b : a));
  return best.known === 0 ? undefined : best;
}

/** Without a column for it, each line is taken as one box on hand. */
function counted(row: ReadRow): ReadRow {
  return row.values.has('box') ? { ...row, values: new Map([...row.values, ['on hand', 1]]) } : row;
}

const breaks = (text: string): number => text.split('\n').length - 1;
