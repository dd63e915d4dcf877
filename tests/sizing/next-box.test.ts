import { describe, expect, test } from 'vitest';
import { nextBox } from '../../src/sizing/next-box.ts';
import type { Box } from '../../src/stock/shoe.ts';

const box = (eu: string, rest: Partial<Box> = {}): Box => ({
  id: `eu-${eu}`,
  shoe: 'tern',
  labels: { eu },
  place: 'A1',
  onHand: 1,
  reserved: 0,
  ...rest,
});
const shoe = { shelf: 'any' } as const;
const [small, tried, large, larger] = ['41', '42', '43', '44'].map((eu) => box(eu)) as [Box, Box, Box, Box];

describe('when the box on the feet was the wrong size', () => {
  test('nextBox: the next longer or shorter one is fetched', () => {
    const boxes = [larger, small, tried, large];
    expect(nextBox(boxes, shoe, tried, 'longer')).toBe(large);
    expect(nextBox(boxes, shoe, tried, 'shorter')).toBe(small);
  });

  test('one that is sold, or put by for somebody, is passed over', () => {
    expect(nextBox([tried, box('43', { onHand: 0 }), larger], shoe, tried, 'longer')).toBe(larger);
    expect(nextBox([tried, box('43', { reserved: 1 })], shoe, tried, 'longer')).toBeUndefined();
  });

  test('the same width comes first among boxes of one length', () => {
    const wide = box('43', { id: 'a-wide', width: 'wide' });
    expect(nextBox([wide, large, tried], shoe, tried, 'longer')).toBe(large);
    expect(nextBox([wide, large, tried], shoe, box('42', { width: 'wide' }), 'longer')).toBe(wide);
  });

  test('what is printed decides, not the file’s order, and nothing is guessed for a box without a size', () => {
    expect(nextBox([large, tried], shoe, box('42', { labels: {} }), 'longer')).toBeUndefined();
    expect(nextBox([box('x', { labels: {} }), large], shoe, tried, 'longer')).toBe(large);
    const inner = [box('42', { id: 'a', innerLength: 277 }), box('42', { id: 'b', innerLength: 277.5 })] as const;
    expect(nextBox(inner, shoe, inner[0], 'longer')).toBeUndefined();
  });
});
