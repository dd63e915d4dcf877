import { extent, type Mark, moved } from './mark.ts';

/** Something that is kept together on one page: its height, and its marks counted from its own top left corner. */
export interface Piece {
  readonly height: number;
  readonly marks: readonly Mark[];
  /** Space wanted above it, unless it is first on the page. */
  readonly before: number;
  /** Never last on a page: a heading stays with what it heads. */
  readonly keep?: true;
}

export const piece = (height: number, marks: readonly Mark[], before = 0): Piece => ({ height, marks, before });

export const shift = (marks: readonly Mark[], dx: number, dy: number): readonly Mark[] =>
  marks.map((mark) => moved(mark, dx, dy));

/** Pieces under each other as one. */
export function stack(pieces: readonly Piece[], before = 0): Piece {
  let height = 0;
  const marks = pieces.flatMap((each, index) => {
    const top = height + (index === 0 ? 0 : each.before);
    height = top + each.height;
    return shift(each.marks, 0, top);
  });
  return { height, marks, before };
}

/** Pieces side by side, tops level, each at its own place from the left. */
export function beside(cells: readonly { readonly x: number; readonly piece: Piece }[], before = 0): Piece {
  return {
    height: Math.max(0, ...cells.map((cell) => cell.piece.height)),
    marks: cells.flatMap((cell) => shift(cell.piece.marks, cell.x, 0)),
    before,
  };
}

/** Pieces in rows of so many columns, read from left to right, each row kept together. */
export function inColumns(
  columns: number,
  width: number,
  gap: number,
  before: number,
  items: readonly ((width: number) => Piece)[],
): readonly Piece[] {
  const each = (width - gap * (columns - 1)) / columns;
  const rows: Piece[] = [];
  for (let start = 0; start < items.length; start += columns) {
    const cells = items.slice(start, start + columns).map((make, at) => ({ x: at * (each + gap), piece: make(each) }));
    rows.push(beside(cells, before));
  }
  return rows;
}

/**
 * Pieces down one column and then down the next, columns about as long as each other, kept together as one piece. A
 * single column stays in pieces.
 */
export function balanced(
  columns: number,
  width: number,
  gap: number,
  before: number,
  items: readonly ((width: number) => Piece)[],
): readonly Piece[] {
  const each = (width - gap * (columns - 1)) / columns;
  const made = items.map((make) => make(each));
  if (columns < 2) return made;
  const total = made.reduce((sum, one) => sum + one.height + one.before, 0);
  const cells: Piece[][] = Array.from({ length: columns }, () => []);
  let down = 0;
  for (const one of made) {
    // Its middle decides the column, so that no column is longer than the others by more than half an item.
    const at = Math.min(columns - 1, Math.floor(((down + one.height / 2) / total) * columns));
    cells[at]?.push(one);
    down += one.height + one.before;
  }
  return [
    beside(
      cells.map((cell, at) => ({ x: at * (each + gap), piece: stack(cell) })),
      before,
    ),
  ];
}

/**
 * Cuts a piece that is taller than a page at the lowest level no mark crosses, so that text is never cut through.
 * Nothing when there is no such level.
 */
export function cutPiece(whole: Piece, room: number): readonly [Piece, Piece] | undefined {
  const extents = whole.marks.map(extent);
  const levels = extents.map((e) => e.bottom).filter((y) => y > 0 && y <= room);
  for (const level of [...new Set(levels)].sort((a, b) => b - a)) {
    if (extents.some((e) => e.top < level && e.bottom > level)) continue;
    const above = whole.marks.filter((_, index) => (extents[index]?.bottom ?? 0) <= level);
    const below = whole.marks.filter((_, index) => (extents[index]?.bottom ?? 0) > level);
    if (below.length === 0) continue;
    const top = Math.min(...below.map((mark) => extent(mark).top));
    return [
      { height: level, marks: above, before: whole.before },
      { height: whole.height - top, marks: shift(below, 0, -top), before: 0 },
    ];
  }
  return undefined;
}
