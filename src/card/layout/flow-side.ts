import { type Flowed, flowPieces, type Slot } from './flow-pieces.ts';
import type { Mark } from './mark.ts';
import type { Piece } from './piece.ts';

/** Where flowing text may stand on a page. Millimetres from its top. */
export interface Frame {
  readonly top: number;
  readonly bottom: number;
}
export interface Place {
  readonly page: number;
  readonly y: number;
}
export interface FlowedSide {
  readonly placed: readonly { readonly page: number; readonly marks: readonly Mark[] }[];
  readonly end: Place;
}

/** Between two columns, millimetres. */
const GAP = 6;

export const columnWidth = (columns: number, width: number): number => (width - GAP * (columns - 1)) / columns;

/**
 * Sets the pieces of a side from a place on, in one column or several. Columns are read one after the other, and those
 * on the last page end at about the same height.
 */
export function flowSide(
  pieces: readonly Piece[],
  from: Place,
  frames: (page: number) => Frame,
  columns: number,
  width: number,
): FlowedSide {
  if (pieces.length === 0) return { placed: [], end: from };
  if (columns < 2) {
    const flowed = flowPieces(
      pieces,
      (index) => ({ page: from.page + index, x: 0, ...frames(from.page + index) }),
      from.y,
    );
    return { placed: flowed.placed, end: { page: from.page + flowed.slot, y: flowed.y } };
  }
  const each = columnWidth(columns, width);
  // The first piece keeps its distance from what stands above.
  const gap = from.y > frames(from.page).top + 1e-9 ? (pieces[0]?.before ?? 0) : 0;
  const flow = (last: number, bottom: number): Flowed =>
    flowPieces(pieces, (index): Slot => {
      const page = from.page + Math.floor(index / columns);
      const frame = frames(page);
      return {
        page,
        x: (index % columns) * (each + GAP),
        top: page === from.page ? from.y + gap : frame.top,
        bottom: page === last ? bottom : frame.bottom,
      };
    });
  const pageOf = (flowed: Flowed) => from.page + Math.floor(flowed.slot / columns);
  const whole = flow(-1, 0);
  const last = pageOf(whole);
  const frame = frames(last);
  const top = last === from.page ? from.y + gap : frame.top;
  const level = Number.isFinite(frame.bottom) ? levelled(flow, pageOf, last, top, frame.bottom) : undefined;
  const best = level ?? whole;
  return { placed: best.placed, end: { page: last, y: best.deepest } };
}

/** The lowest bottom of the last page's columns under which all still fits, to half a millimetre. */
function levelled(
  flow: (last: number, bottom: number) => Flowed,
  pageOf: (flowed: Flowed) => number,
  last: number,
  top: number,
  bottom: number,
): Flowed | undefined {
  let low = top;
  let high = bottom;
  let best: Flowed | undefined;
  while (high - low > 0.5) {
    const middle = (low + high) / 2;
    const flowed = flow(last, middle);
    if (pageOf(flowed) === last && flowed.deepest <= middle + 1e-6) {
      best = flowed;
      high = middle;
    } else low = middle;
  }
  return best;
}
