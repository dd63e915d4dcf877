import type { AttributeKey, ListKey, MarkKey } from './attributes.ts';
import { LIST_ROWS } from './lists.ts';
import { MARK_ROWS } from './marks.ts';
import { NUMBER_ROWS } from './numbers.ts';
import type { ListRow, MarkRow, NumberRow } from './row.ts';

export type AttributeRow = NumberRow | MarkRow | ListRow;

/** The one table of shoe properties, in the order of a stock list's columns. Everything else reads it. */
export const ATTRIBUTES: readonly AttributeRow[] = [...NUMBER_ROWS, ...MARK_ROWS, ...LIST_ROWS];

const byKey: ReadonlyMap<string, AttributeRow> = new Map(ATTRIBUTES.map((row) => [row.key, row]));

/**
 * The table's row for a property.
 *
 * @example
 * attribute('drop').unit // 'mm'
 * attribute('cushion').anchors // ['very-firm', 'firm', 'medium', 'soft', 'very-soft']
 * attribute('closure').open // false
 */
export function attribute(key: AttributeKey): NumberRow;
export function attribute(key: MarkKey): MarkRow;
export function attribute(key: ListKey): ListRow;
export function attribute(key: AttributeKey | MarkKey | ListKey): AttributeRow {
  const row = byKey.get(key);
  if (!row) throw new Error(`No row for ${key} in the attribute table`);
  return row;
}

/** The row for a key from a rule or a file, or nothing if the table has none. */
export const findAttribute = (key: string): AttributeRow | undefined => byKey.get(key);

/**
 * Desirability, 0 to 1, that stands in for a figure nobody recorded: the mean of a straight-line desirability over its
 * range, as the R package `desirability` (Kuhn) does. Neither reward nor ruin; the gap is named beside the pair.
 */
export const SUBSTITUTE_DESIRABILITY = 0.5;
