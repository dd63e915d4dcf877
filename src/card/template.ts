/** The parts a card is put together from. What each shows and how short it may get is in `print-templates/README.md`. */
export const BLOCKS = [
  'head',
  'boxes',
  'code',
  'title',
  'pairs',
  'strips',
  'tasks',
  'size',
  'advice',
  'cautions',
  'ease-in',
  'care',
  'decision',
  'try-ons',
  'measures',
  'changes',
  'bench',
  'notes',
  'health',
  'disclaimer',
  'fades',
] as const;
export type BlockId = (typeof BLOCKS)[number];

/** Every card shows these, whole. `most` may not be set on them. */
export const MUST_SHOW: readonly BlockId[] = ['title', 'cautions', 'ease-in', 'care', 'health', 'disclaimer', 'code'];

/** How one shop prints a card: a page, its margins, and which blocks stand on it in which order. Millimetres and points. */
export interface Template {
  readonly id: string;
  readonly page: { readonly width: number; readonly height: number | 'auto' };
  readonly margins: { readonly top: number; readonly right: number; readonly bottom: number; readonly left: number };
  /** Several pages side by side on one larger sheet, to be cut apart. */
  readonly sheet?: { readonly width: number; readonly height: number; readonly across: number };
  /** `tag` prints the manila ground and brown thread; `black` prints black alone, for thermal paper. */
  readonly ink: 'tag' | 'black';
  /** No line is thinner, millimetres. */
  readonly hairline: number;
  readonly type: TypeSizes;
  readonly code: {
    /** Side of one small square of the code, millimetres, where there is room. */
    readonly module: number;
    /** Never smaller. */
    readonly least: number;
  };
  /** The fitter's part: a tag with a punched hole across the top of the first page, to tear off along the seam. */
  readonly stub?: {
    /** On its back, above lines to write on. */
    readonly back: readonly BlockRow[];
  };
  readonly sides: readonly Side[];
  /** Mark where the paper is cut, after the last block. */
  readonly cut: boolean;
}

/** Points. `body` may be several, tried from the largest: the type shrinks before anything else does. */
export interface TypeSizes {
  readonly body: readonly number[];
  readonly small: number;
  readonly heading: number;
  readonly title: number;
  readonly ticket: number;
  readonly fetch: number;
}

export interface Side {
  /** Its blocks stand in so many columns, read one after the other. Absent: one. */
  readonly columns?: number;
  readonly blocks: readonly BlockRow[];
}
export interface BlockRow {
  readonly block: BlockId;
  /** Items side by side. */
  readonly columns?: number;
  /** How many items at most: strips, tasks, or reasons and misgivings of each pair. */
  readonly most?: number;
  /** How far `most` may be lowered where that saves a page. Absent: it may not. */
  readonly least?: number;
  /** May stand at the end of the side before, where that has room left. */
  readonly early?: true;
}
