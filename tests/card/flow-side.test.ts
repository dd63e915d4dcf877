import { expect, it } from 'vitest';
import { flowSide } from '../../src/card/layout/flow-side.ts';
import { piece } from '../../src/card/layout/piece.ts';

/** Toy pages of 100 mm with 10 mm above and below. */
const frames = () => ({ top: 10, bottom: 90 });
const tall = (height: number) =>
  piece(height, [{ kind: 'line', x1: 0, y1: 0, x2: 1, y2: height, weight: 0.3, ink: 'ink' }]);
const pages = (columns: number) => flowSide([tall(6), tall(6)], { page: 0, y: 86 }, frames, columns, 100);

it.each([1, 2, 3])('where a page has less room left than a heading takes, %i columns begin on the next', (columns) => {
  const { placed, end } = pages(columns);
  expect(placed.map(({ page }) => page)).toEqual([1, 1]);
  expect(end.page).toBe(1);
});
