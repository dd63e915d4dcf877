import type { Range } from './combine.ts';

/** How far two ranges are apart, 0 where they touch or overlap. Rounded, so that binary dust is no gap. */
export const gapBetween = (a: Range, b: Range): number =>
  Math.max(0, Number(Math.max(a[0] - b[1], b[0] - a[1]).toFixed(6)));
