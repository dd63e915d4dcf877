import type { AttributeKey, ListKey, MarkKey } from '../attributes/attributes.ts';

export const SHELVES = ['men', 'women', 'junior', 'any'] as const;
export type Shelf = (typeof SHELVES)[number];

/** A model in the catalogue. A figure that was not recorded is absent: never zero, never an average. */
export interface Shoe {
  readonly id: string;
  readonly name: string;
  /** What the shop sells it for, of `USES` or a word of its own. A shoe sold for something else loses a little; see `preferred.ts`. */
  readonly use: readonly string[];
  readonly shelf: Shelf;
  readonly numbers: Readonly<Partial<Record<AttributeKey, number>>>;
  readonly marks: Readonly<Partial<Record<MarkKey, boolean>>>;
  readonly lists: Readonly<Partial<Record<ListKey, readonly string[]>>>;
  /** Mass was weighed in this size (a label, e.g. `eu 42`). */
  readonly massSize?: string;
  /** How the model runs against its labels, millimetres of inner length; + runs large. Absent: not known. */
  readonly sizeOffset?: number;
  /** US women's label minus US men's, in sizes, as this maker does it. Absent: not known, and never inferred. */
  readonly usWomenOffset?: number;
  /** Columns the house has no name for, by their header: kept as text, never scored. */
  readonly extra?: Readonly<Record<string, string>>;
}

export const LABEL_SYSTEMS = ['eu', 'uk', 'us-men', 'us-women', 'uk-child', 'us-child', 'mondopoint', 'cm'] as const;
export type LabelSystem = (typeof LABEL_SYSTEMS)[number];

export const BOX_WIDTHS = ['narrow', 'standard', 'wide', 'extra-wide'] as const;
export type BoxWidth = (typeof BOX_WIDTHS)[number];

/** One stock entry: a model in one size, with every size label printed on the box. */
export interface Box {
  readonly id: string;
  readonly shoe: string;
  /** Labels as printed (`42 2/3`, `8.5`, `270`); they often do not convert into each other. */
  readonly labels: Readonly<Partial<Record<LabelSystem, string>>>;
  /** Stated inner length, millimetres. */
  readonly innerLength?: number;
  readonly width?: BoxWidth;
  /** Where it stands: `C4`. */
  readonly place: string;
  readonly onHand: number;
  readonly reserved: number;
  /** Columns the house has no name for, by their header: kept as text. */
  readonly extra?: Readonly<Record<string, string>>;
}

/** A shop's stock as loaded, with what happened to boxes since ("sold", "not on the shelf"), for the day. */
export interface Stock {
  readonly shoes: readonly Shoe[];
  readonly boxes: readonly Box[];
  /** When the stock list was made or loaded: ISO date and time, local. */
  readonly asOf: string;
}
