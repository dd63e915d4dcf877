import type { BoxFit, SizeAdvice } from '../sizing/advice.ts';
import { boxesToFetch } from '../sizing/box-fit.ts';
import { boxesByShoe } from '../stock/index-boxes.ts';
import type { Stock } from '../stock/shoe.ts';

/** For each shoe on hand in the size, the boxes to fetch, the first first. A shoe not on hand in it is not in the map. */
export type BoxesInSize = ReadonlyMap<string, readonly BoxFit[]>;

/**
 * Looks every box over once; line-ups for several parts of a visit share it. While the foot is not known no size can
 * shut a shoe out: every shoe on hand is in the map, with no box to fetch until somebody measures.
 */
export function boxesInSize({ shoes, boxes }: Pick<Stock, 'shoes' | 'boxes'>, advice: SizeAdvice): BoxesInSize {
  const own = boxesByShoe({ boxes });
  const inSize = new Map<string, readonly BoxFit[]>();
  for (const shoe of shoes) {
    const free = (own.get(shoe.id) ?? []).filter(({ onHand, reserved }) => onHand > reserved);
    if (free.length === 0) continue;
    const fetch = boxesToFetch(free, shoe, advice);
    if (fetch.length > 0 || advice.footLength === undefined) inSize.set(shoe.id, fetch);
  }
  return inSize;
}
