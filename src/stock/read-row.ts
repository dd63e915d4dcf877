import type { Finding } from '../units/result.ts';
import type { Column } from './columns.ts';
import { looksLikeFormula, unguarded } from './formula.ts';
import { withoutHidden } from './hidden.ts';
import { type CellValue, readCell } from './read-cell.ts';
import type { FileColumn } from './read-header.ts';
import type { SplitRow } from './split-rows.ts';

/** One line of a stock list, its cells read. */
export interface ReadRow {
  readonly line: number;
  /** Values by our own header; what was blank is absent. */
  readonly values: ReadonlyMap<string, CellValue>;
  readonly extra: Readonly<Record<string, string>>;
  readonly findings: readonly Finding[];
  /** An error among the findings: no box comes of this line. */
  readonly refused: boolean;
  /** Its model's columns are sound, so it may still say what the model is: one bad box must not take the others along. */
  readonly defines: boolean;
}

/** Reads the cells of one line by themselves; what they mean together is for `assemble`. */
export function readRow(row: SplitRow, columns: readonly FileColumn[]): ReadRow {
  const values = new Map<string, CellValue>();
  const extra: [string, string][] = [];
  const findings: Finding[] = [];
  const { line } = row;
  const find = (code: string, severity: Finding['severity'], more: Partial<Finding> = {}) =>
    findings.push({ code, severity, line, ...more });

  if (row.broken) find('stock-row-quote', 'error', { value: withoutHidden((row.cells.at(-1) ?? '').slice(0, 60)) });
  const beyond = row.cells.slice(columns.length).find((cell) => cell.trim() !== '');
  // An unquoted decimal comma in a file with commas between its cells pushes everything after it one column on.
  if (beyond !== undefined) {
    find('stock-row-long', 'error', { value: withoutHidden(beyond.slice(0, 60)), data: { columns: columns.length } });
  }
  let defines = findings.length === 0;
  if (defines) {
    for (const [at, given] of row.cells.slice(0, columns.length).entries()) {
      const { header, column, dropped } = columns[at] as FileColumn;
      const shown = withoutHidden(given);
      const raw = shown.trim();
      const text = unguarded(raw);
      if (dropped) continue;
      if (shown !== given) find('stock-hidden', 'note', { column: header, value: text.slice(0, 60) });
      if (text === '') continue;
      if (!column) {
        extra.push([header, text]);
        continue;
      }
      const cell = readCell(column.field, text);
      if ('code' in cell) {
        if (column.field.of === 'shoe') defines = false;
        find(cell.code, 'error', {
          column: header,
          value: text.slice(0, 60),
          ...(cell.data ? { data: cell.data } : {}),
        });
        continue;
      }
      values.set(column.header, cell.value);
      for (const value of cell.strange ?? []) find('stock-word-unknown', 'note', { column: header, value });
      if (raw === text && isText(column) && looksLikeFormula(text)) {
        find('stock-formula', 'note', { column: header, value: text.slice(0, 60) });
      }
    }
  }
  const refused = findings.some((finding) => finding.severity === 'error');
  return { line, values, extra: Object.fromEntries(extra), findings, refused, defines };
}

const isText = ({ field }: Column): boolean => ['id', 'name', 'place', 'mass-size'].includes(field.part);
