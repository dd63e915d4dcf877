import type { Box, Shoe, Stock } from '../../src/stock/shoe.ts';
import { writeStock } from '../../src/stock/write-csv.ts';

/** Models and boxes of the largest shop we mean to serve. */
export const MODELS = 5000;
const SIZES = 12;

/** A stock list as long as the largest shop's: every model in twelve sizes, all of it invented and the same each time. */
export function bigStock(): string {
  const shoes = Array.from(
    { length: MODELS },
    (_, at): Shoe => ({
      id: `model-${at}`,
      name: `Made-up ${at}`,
      use: ['road'],
      shelf: at % 2 === 0 ? 'women' : 'men',
      numbers: { mass: 200 + (at % 150), drop: at % 13, cushion: 1 + (at % 5), price: 60 + (at % 140) },
      marks: { 'non-marking': at % 3 === 0 },
      lists: { closure: ['laces'], colour: ['black'] },
    }),
  );
  const boxes = shoes.flatMap(({ id }, at) =>
    Array.from(
      { length: SIZES },
      (_, size): Box => ({
        id: `${id}-${size}`,
        shoe: id,
        labels: { eu: String(36 + size), uk: String(3 + size), mondopoint: String(230 + 5 * size) },
        innerLength: 238 + 6 * size,
        place: `${String.fromCharCode(65 + (at % 26))}${at % 40}`,
        onHand: 1 + (size % 2),
        reserved: 0,
      }),
    ),
  );
  const stock: Stock = { shoes, boxes, asOf: '' };
  return writeStock(stock);
}
