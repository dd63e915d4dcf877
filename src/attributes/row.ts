import type { AttributeKey, ListKey, MarkKey } from './attributes.ts';

/** What every row of the attribute table says, whatever its kind. */
interface Row {
  /** Header of its column in a stock list, with the unit where it has one. */
  readonly column: string;
  /** Other headers that mean the same, in English and German, without unit. */
  readonly aliases: readonly string[];
  /** Where the ranges, steps and anchors come from. */
  readonly source: string;
}

/** A property with a size: measured (`number`) or judged by hand against anchored words (`ordinal`). */
export interface NumberRow extends Row {
  readonly key: AttributeKey;
  readonly kind: 'number' | 'ordinal';
  /** `step` counts the anchored words; `money` is the shop's own currency. */
  readonly unit: 'g' | 'mm' | 'money' | 'step';
  /** The scale to draw and compare on: what shoes in a shop usually span. Values outside it are possible. */
  readonly range: readonly [number, number];
  /** Outside these a value in a stock list is taken for a slip and refused. */
  readonly accepted: readonly [number, number];
  /** A difference that people notice; the default width over which desirability falls outside an ideal range. */
  readonly step: number;
  /** What most people want of it when nothing else is known. */
  readonly wanted: 'more' | 'less' | 'range';
  /** Ids of the anchored words, from the lowest value of the range up. Ordinals only. */
  readonly anchors?: readonly string[];
  /** Seldom found in a maker's data: measured in the shop, or unknown. */
  readonly rare: boolean;
  /** Tools for measuring it in a shop, in the order used; a drawing for each is in `stock/how-to-measure`. */
  readonly tools: readonly Tool[];
}

export const TOOLS = ['scales', 'rod-gauge', 'rule', 'tread-gauge', 'thumb', 'hands', 'eye', 'box'] as const;
export type Tool = (typeof TOOLS)[number];

/** A property that a shoe has or has not. */
export interface MarkRow extends Row {
  readonly key: MarkKey;
  readonly kind: 'mark';
  readonly tools: readonly Tool[];
}

/** A property that is several things at once. */
export interface ListRow extends Row {
  readonly key: ListKey;
  readonly kind: 'list';
  readonly items: readonly ListItem[];
  /** Other words are kept as they stand; otherwise they are refused. */
  readonly open: boolean;
  readonly tools: readonly Tool[];
}

export interface ListItem {
  readonly id: string;
  /** Other spellings in a stock list, lower case. */
  readonly aliases: readonly string[];
}
