import type { Mark } from './mark.ts';
import { cutPiece, type Piece, shift } from './piece.ts';

/** A stretch of paper that flowing text fills from the top: a page, or one column of it. Millimetres. */
export interface Slot {
  readonly page: number;
  /** Of its left edge, from the margin. */
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
}

export interface Flowed {
  readonly placed: readonly { readonly page: number; readonly marks: readonly Mark[] }[];
  /** The slot that was filled last, and how far down. */
  readonly slot: number;
  readonly y: number;
  /** How far down the fullest slot of the last page goes. */
  readonly deepest: number;
}

/** Sets pieces under each other, on into further slots as needed. A heading moves with what it heads. */
export function flowPieces(pieces: readonly Piece[], slots: (index: number) => Slot, from = slots(0).top): Flowed {
  const placed: { page: number; marks: readonly Mark[] }[] = [];
  let at = 0;
  let slot = slots(0);
  let y = from;
  let deepest = from;
  const queue = [...pieces];
  while (queue.length > 0) {
    const group = nextGroup(queue);
    const fresh = y <= slot.top + 1e-9;
    const height = group.reduce((sum, each, index) => sum + (index === 0 && fresh ? 0 : each.before) + each.height, 0);
    if (y + height > slot.bottom + 1e-6) {
      const next = slots(at + 1);
      if (!fresh || (height > room(slot) && roomierAhead(slots, at))) {
        if (next.page !== slot.page) deepest = next.top;
        at++;
        slot = next;
        y = slot.top;
        continue;
      }
      if (group.length === 1) cutTallest(queue, slot);
    }
    // A group too tall for any slot is set piece by piece.
    const now = height > room(slot) ? 1 : group.length;
    for (const each of queue.splice(0, now)) {
      const first = y <= slot.top + 1e-9;
      y += first ? 0 : each.before;
      placed.push({ page: slot.page, marks: shift(first ? each.marks.map(notAbove) : each.marks, slot.x, y) });
      y += each.height;
    }
    deepest = Math.max(deepest, y);
  }
  return { placed, slot: at, y, deepest };
}

const room = ({ top, bottom }: Slot): number => bottom - top;

/** As many columns as stand beside each other at most, all as low as the one that is too low. */
const LOOK_AHEAD = 4;

const roomierAhead = (slots: (index: number) => Slot, at: number): boolean =>
  Array.from({ length: LOOK_AHEAD }, (_, ahead) => slots(at + 1 + ahead)).some((each) => room(each) > room(slots(at)));

/** A rule that reaches up to what stands above does not, where nothing does. */
const notAbove = (mark: Mark): Mark => (mark.kind === 'line' && mark.y1 < 0 ? { ...mark, y1: 0 } : mark);

function nextGroup(queue: readonly Piece[]): readonly Piece[] {
  let end = 0;
  while (queue[end]?.keep && end < queue.length - 1) end++;
  return queue.slice(0, end + 1);
}

/** Puts a piece that no slot can hold into two, between its lines. */
function cutTallest(queue: Piece[], { top, bottom }: Slot): void {
  const whole = queue[0];
  const cut = whole && cutPiece(whole, bottom - top);
  if (cut) queue.splice(0, 1, ...cut);
}
