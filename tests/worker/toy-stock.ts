import type { Box, Shoe, Stock } from '../../src/stock/shoe.ts';

/** Toy stock, invented. */
const shoe = (id: string, name: string): Shoe => ({
  id,
  name,
  use: [],
  shelf: 'any',
  numbers: {},
  marks: {},
  lists: {},
});
const box = (id: string, of: string, labels: Box['labels'], place: string, onHand = 1): Box => ({
  id,
  shoe: of,
  labels,
  place,
  onHand,
  reserved: 0,
});

export const TOY: Stock = {
  asOf: '2026-11-25T09:00:00',
  shoes: [shoe('heron', 'Marsh Heron'), shoe('tern', '<b>Tern</b>')],
  boxes: [
    box('h42', 'heron', { eu: '42', uk: '8' }, 'C4', 2),
    box('h42h', 'heron', { eu: '42 1/2' }, 'C4'),
    box('t42', 'tern', { eu: '42', cm: '8' }, 'D1'),
  ],
};
