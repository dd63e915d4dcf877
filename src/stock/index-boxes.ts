import type { Box, Stock } from './shoe.ts';

/**
 * The boxes of each model, by the model's id, in the order of the stock list. A model without boxes is not in it.
 *
 * @example
 * boxesByShoe(stock).get('marsh-heron') // [box m1, box m2]
 */
export function boxesByShoe(stock: Pick<Stock, 'boxes'>): ReadonlyMap<string, readonly Box[]> {
  const index = new Map<string, Box[]>();
  for (const box of stock.boxes) {
    const own = index.get(box.shoe);
    if (own) own.push(box);
    else index.set(box.shoe, [box]);
  }
  return index;
}
