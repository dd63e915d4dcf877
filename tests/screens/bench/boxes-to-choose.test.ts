import { expect, it } from 'vitest';
import { boxesToChoose } from '../../../src/screens/fitter/boxes-to-choose.ts';
import type { Box } from '../../../src/stock/shoe.ts';
import type { TryOn } from '../../../src/visit/visit.ts';

/** Toy boxes of one toy shoe. */
const box = (id: string, shoe = 'toy'): Box => ({ id, shoe, labels: { eu: id }, place: 'A1', onHand: 1, reserved: 0 });
const entry = {
  shoe: { id: 'toy' },
  boxes: ['42', '43', '44'].map((id) => ({ box: box(id) })),
} as unknown as Parameters<typeof boxesToChoose>[0];
const tried = (id: string, shoe = 'toy'): TryOn => ({ shoe, box: id, notes: {}, rubs: [] });
const ids = (tryOns: readonly TryOn[], stocked: readonly Box[] = []) =>
  boxesToChoose(entry, tryOns, stocked).map(({ id }) => id);

it('a customer may take either box that was to fetch', () => {
  expect(ids([tried('42')])).toEqual(['42', '43']);
});

it('a customer may take a further size that was on their feet, and no other', () => {
  expect(ids([tried('42'), tried('45')], [box('45'), box('46'), box('42')])).toEqual(['42', '43', '45']);
  expect(ids([tried('44')], [box('44')])).toEqual(['42', '43', '44']);
  expect(ids([tried('45', 'another')], [box('45', 'another')])).toEqual(['42', '43']);
});
