/** Colours by their job; which paint each is depends on the template's ink. */
export type Ink = 'ink' | 'soft' | 'rule' | 'thread' | 'tag' | 'band' | 'paper';

/** One thing drawn on paper. Millimetres from the top left; type sizes in points. */
export type Mark = TextMark | LineMark | BoxMark | DiscMark | ShapeMark | CodeMark | DrawingMark | LogoMark;

export interface TextMark {
  readonly kind: 'text';
  readonly x: number;
  /** Of the baseline. */
  readonly y: number;
  readonly width: number;
  readonly text: string;
  readonly size: number;
  readonly bold: boolean;
  readonly ink: Ink;
  /** A word of its text that no line had room for, so that it was broken where no word is. */
  readonly cut?: string;
}
export interface LineMark {
  readonly kind: 'line';
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
  readonly weight: number;
  readonly ink: Ink;
  readonly stitched?: true;
}
export interface BoxMark {
  readonly kind: 'box';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly fill?: Ink;
  readonly stroke?: Ink;
  readonly weight?: number;
  readonly stitched?: true;
}
export interface DiscMark {
  readonly kind: 'disc';
  readonly x: number;
  readonly y: number;
  readonly r: number;
  readonly fill?: Ink;
  readonly stroke?: Ink;
  readonly weight?: number;
}
export interface ShapeMark {
  readonly kind: 'shape';
  readonly points: readonly (readonly [number, number])[];
  readonly closed: boolean;
  readonly fill?: Ink;
  readonly stroke?: Ink;
  readonly weight?: number;
}
/** The square code: rows of small squares, true is dark. `x` and `y` are of its first square, inside the quiet zone. */
export interface CodeMark {
  readonly kind: 'code';
  readonly x: number;
  readonly y: number;
  readonly module: number;
  readonly rows: readonly (readonly boolean[])[];
}
/** A line drawing of our own, painted in one ink. */
export interface DrawingMark {
  readonly kind: 'drawing';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly svg: string;
  readonly ink: Ink;
}
export interface LogoMark {
  readonly kind: 'logo';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly svg: string;
}

/** A point of type in millimetres. */
export const POINT = 25.4 / 72;

/** The stitch, the card's one ornament: dashes 8 on and 5 off, in units of a quarter millimetre. */
export const STITCH: readonly [number, number] = [2, 1.25];

/** Share of a type size above and below the baseline that a line of text takes up (the font's own figures). */
export const ASCENT = 0.984;
export const DESCENT = 0.316;

/** The ground a mark covers. */
export interface Extent {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export function extent(mark: Mark): Extent {
  switch (mark.kind) {
    case 'text': {
      // Capitals and descenders, not the whole line: what ink can reach.
      const em = mark.size * POINT;
      return { left: mark.x, right: mark.x + mark.width, top: mark.y - em * 0.75, bottom: mark.y + em * 0.25 };
    }
    case 'line': {
      const half = mark.weight / 2;
      const upright = mark.x1 === mark.x2;
      return {
        left: Math.min(mark.x1, mark.x2) - (upright ? half : 0),
        right: Math.max(mark.x1, mark.x2) + (upright ? half : 0),
        top: Math.min(mark.y1, mark.y2) - (upright ? 0 : half),
        bottom: Math.max(mark.y1, mark.y2) + (upright ? 0 : half),
      };
    }
    case 'box':
    case 'drawing':
    case 'logo':
      return { left: mark.x, top: mark.y, right: mark.x + mark.width, bottom: mark.y + mark.height };
    case 'disc': {
      const r = mark.r + (mark.weight ?? 0) / 2;
      return { left: mark.x - r, top: mark.y - r, right: mark.x + r, bottom: mark.y + r };
    }
    case 'shape': {
      const xs = mark.points.map(([x]) => x);
      const ys = mark.points.map(([, y]) => y);
      return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
    }
    case 'code': {
      const side = mark.rows.length * mark.module;
      return { left: mark.x, top: mark.y, right: mark.x + side, bottom: mark.y + side };
    }
  }
}

/** The same mark, elsewhere. */
export function moved<M extends Mark>(mark: M, dx: number, dy: number): M;
export function moved(mark: Mark, dx: number, dy: number): Mark {
  if (mark.kind === 'line') {
    return { ...mark, x1: mark.x1 + dx, x2: mark.x2 + dx, y1: mark.y1 + dy, y2: mark.y2 + dy };
  }
  if (mark.kind === 'shape') return { ...mark, points: mark.points.map(([x, y]) => [x + dx, y + dy] as const) };
  return { ...mark, x: mark.x + dx, y: mark.y + dy };
}
