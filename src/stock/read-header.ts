import type { Finding } from '../units/result.ts';
import { COLUMNS, type Column } from './columns.ts';
import { unguarded } from './formula.ts';
import { withoutHidden } from './hidden.ts';

/** A column as it stands in a file: one of ours, or one of the shop's own that is kept as text. */
export interface FileColumn {
  /** As it stands in the file, made unique. */
  readonly header: string;
  /** Absent: not one of ours. */
  readonly column?: Column;
  /** A repeat of an earlier column, or one without header: not read. */
  readonly dropped?: true;
}

/** Longer is no name of a column, and is not looked at for one. */
const LONGEST = 120;

const UNIT_WORDS: Readonly<Record<string, readonly string[]>> = {
  g: ['g', 'gr', 'gram', 'grams', 'gramm'],
  mm: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'],
};

const known: ReadonlyMap<string, Column> = new Map(
  COLUMNS.flatMap((column) => [column.header, ...column.aliases].map((name) => [plain(name), column] as const)),
);
/** By name without unit, to notice a column that is ours but in another unit. */
const unitless: ReadonlyMap<string, Column> = new Map(
  COLUMNS.flatMap((column) =>
    [column.header, ...column.aliases].map((name) => [plain(withoutUnit(name)), column] as const),
  ),
);

/** How many of these headers are ours: tells which delimiter a file uses. */
export const countKnown = (headers: readonly string[]): number =>
  headers.filter((header) => find(header).column !== undefined).length;

/** What each column of a file is, with findings for those that are strange, double or in another unit. */
export function readHeader(
  headers: readonly string[],
  line: number,
): { readonly columns: readonly FileColumn[]; readonly findings: readonly Finding[] } {
  const findings: Finding[] = [];
  const columns: FileColumn[] = [];
  const taken = new Set<string>();
  for (const [at, cell] of headers.entries()) {
    const text = unguarded(withoutHidden(cell).trim()).slice(0, LONGEST).trim();
    const { column, otherUnit } = find(text);
    const header = unique(text || `column ${at + 1}`, taken);
    taken.add(header);
    if (column && columns.some((one) => one.column === column)) {
      findings.push({ code: 'stock-column-twice', severity: 'error', line, column: text });
      columns.push({ header, dropped: true });
      continue;
    }
    if (otherUnit) {
      findings.push({
        code: 'stock-column-unit',
        severity: 'error',
        line,
        column: text,
        data: { expected: otherUnit.header },
      });
    } else if (!column && text) {
      findings.push({ code: 'stock-column-unknown', severity: 'note', line, column: text });
    }
    columns.push(column ? { header, column } : { header });
  }
  return { columns, findings };
}

function find(header: string): { readonly column?: Column; readonly otherUnit?: Column } {
  if (header.length > LONGEST) return {};
  const exact = known.get(plain(header)) ?? unitless.get(plain(header));
  if (exact) return { column: exact };
  const column = unitless.get(plain(withoutUnit(header)));
  const unit = /[([]([^)\]]*)[)\]]\s*$/.exec(header)?.[1]?.trim().toLowerCase();
  if (!column || unit === undefined) return {};
  const expected = /\(([^)]*)\)/.exec(column.header)?.[1];
  if (expected === undefined) return { column };
  return UNIT_WORDS[expected]?.includes(unit) ? { column } : { otherUnit: column };
}

function plain(header: string): string {
  return header
    .toLowerCase()
    .replaceAll(/[\s_./()[\]–-]+/g, ' ')
    .trim();
}

function withoutUnit(header: string): string {
  return header.replace(/[([][^)\]]*[)\]]\s*$/, '');
}

function unique(header: string, taken: ReadonlySet<string>): string {
  let name = header;
  for (let copy = 2; taken.has(name); copy++) name = `${header} (${copy})`;
  return name;
}
