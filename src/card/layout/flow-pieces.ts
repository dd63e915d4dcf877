import type { Mark } from './mark.ts';
import { cutPiece, type Piece, shift } from './piece.ts';

/** Where flowing text may stand on a page. Millimetres from its top. */
export interface Frame {
  readonly top: number;
  readonly bottom: number;
}

export interface Flowed {
  readonly placed: readonly { readonly page: number; readonly marks: readonly Mark[] }[];
  readonly lastPage: number;
  /** Bottom of what was placed last. */
  readonly y: number;
}

/** Sets pieces under each other, on to further pages as needed. A heading moves with what it heads. */
export function flowPieces(
  pieces: readonly Piece[],
  frame: (page: number) => Frame,
  firstPage: number,
  from = frame(firstPage).top,
): Flowed {
  const placed: { page: number; marks: readonly Mark[] }[] = [];
  let page = firstPage;
  let y = from;
  const queue = [...pieces];
  while (queue.length > 0) {
    const group = nextGroup(queue);
    const fresh = y <= frame(page).top + 1e-9;
    const height = group.reduce((sum, each, index) => sum + (index === 0 && fresh ? 0 : each.before) + each.height, 0);
    if (y + height > frame(page).bottom + 1e-6) {
      const roomier = room(frame(page + 1)) > room(frame(page));
      if (!fresh || (roomier && height > room(frame(page)))) {
        page++;
        y = frame(page).top;
        continue;
      }
      if (group.length === 1) cutTallest(queue, frame(page));
    }
    // A group too tall for any page is set piece by piece.
    const now = height > room(frame(page)) ? 1 : group.length;
    for (const each of queue.splice(0, now)) {
      y += y <= frame(page).top + 1e-9 ? 0 : each.before;
      placed.push({ page, marks: shift(each.marks, 0, y) });
      y += each.height;
    }
  }
  return { placed, lastPage: page, y };
}

const room = ({ top, bottom }: Frame): number => bottom - top;

function nextGroup(queue: readonly Piece[]): readonly Piece[] {
  let end = 0;
  while (queue[end]?.keep && end < queue.length - 1) end++;
  return queue.slice(0, end + 1);
}

/** Puts a piece that no page can hold into two, between its lines. */
function cutTallest(queue: Piece[], { top, bottom }: Frame): void {
  const whole = queue[0];
  const cut = whole && cutPiece(whole, bottom - top);
  if (cut) queue.splice(0, 1, ...cut);
}
