import type { Box, Stock } from './shoe.ts';

/** What happened to a box since the stock list was made: one pair sold, or none to be found where it should stand. */
export interface BoxMark {
  readonly box: string;
  readonly what: 'sold' | 'not-on-the-shelf';
  /** ISO date and time, local. */
  readonly at: string;
}

/**
 * The stock as it stands now: the list, less what was marked today.
 *
 * A mark holds for its own day. `sold` takes one pair off, unless the list is younger than the mark and so has it
 * already; `not-on-the-shelf` leaves none to fetch, whatever the list says, until the day ends or the mark is taken back.
 *
 * @param date today, `2026-11-25`.
 * @example
 * stockToday(stock, [{ box: 'm1', what: 'sold', at: '2026-11-25T10:30' }], '2026-11-25') // box m1: onHand 2 → 1
 */
export function stockToday(stock: Stock, marks: readonly BoxMark[], date: string): Stock {
  const today = marks.filter((mark) => mark.at.startsWith(date));
  if (today.length === 0) return stock;
  // A list from a day to come was stamped by a wrong clock, and knows of no sale.
  const isToCome = stock.asOf.slice(0, 10) > date;
  const sold = new Map<string, number>();
  const gone = new Set<string>();
  for (const { box, what, at } of today) {
    if (what === 'not-on-the-shelf') gone.add(box);
    else if (at >= stock.asOf || isToCome) sold.set(box, (sold.get(box) ?? 0) + 1);
  }
  const boxes = stock.boxes.map((box): Box => {
    const onHand = gone.has(box.id) ? 0 : Math.max(0, box.onHand - (sold.get(box.id) ?? 0));
    return onHand === box.onHand ? box : { ...box, onHand };
  });
  return { ...stock, boxes };
}

/** The marks without the last one made on a box: the tap undone. */
export function withoutLastMark(marks: readonly BoxMark[], box: string): readonly BoxMark[] {
  const last = marks.findLastIndex((mark) => mark.box === box);
  return marks.filter((_, at) => at !== last);
}

/**
 * Pairs of a box that can be fetched: on hand and not put by for somebody.
 *
 * @example
 * available({ onHand: 2, reserved: 1 }) // 1
 */
export const available = (box: Pick<Box, 'onHand' | 'reserved'>): number => Math.max(0, box.onHand - box.reserved);

/** The last pair of this model in this size that can be fetched. */
export const isLastPair = (box: Pick<Box, 'onHand' | 'reserved'>): boolean => available(box) === 1;
