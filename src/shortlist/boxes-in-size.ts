import type { BoxFit, SizeAdvice } from '../sizing/advice.ts';
import { boxesToFetch } from '../sizing/box-fit.ts';
import { boxesByShoe } from '../stock/index-boxes.ts';
import type { Shoe, Stock } from '../stock/shoe.ts';

/** For each shoe on hand in the size, the boxes to fetch, the first first. A shoe without one is not in it. */
export type BoxesInSize = ReadonlyMap<string, readonly BoxFit[]>;

/** Looks every box over once; line-ups for several parts of a visit share it. */
export function boxesInSize(stock: Stock, advice: SizeAdvice): BoxesInSize {
  const boxes = boxesByShoe(stock);
  return new Map(
    stock.shoes.flatMap((shoe: Shoe): [string, readonly BoxFit[]][] => {
      const free = (boxes.get(shoe.id) ?? []).filter(({ onHand, reserved }) => onHand > reserved);
      const fetch = boxesToFetch(free, shoe, advice);
      return fetch.length > 0 ? [[shoe.id, fetch]] : [];
    }),
  );
}
