import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isEcho, type Tap } from '../../../src/screens/parts/quick-taps.ts';

const first: Tap = { at: 1000, x: 50, y: 80, page: 'shelf' };
const anyTap = fc.record({
  at: fc.integer({ min: 0, max: 5000 }),
  x: fc.integer({ min: 0, max: 1366 }),
  y: fc.integer({ min: 0, max: 1366 }),
  page: fc.constantFrom('shelf', 'age-band'),
});

describe('the second of two quick taps', () => {
  it('is an echo, as in the example, when the page turned in between', () => {
    expect(isEcho({ at: 0, x: 50, y: 80, page: 'shelf' }, { at: 150, x: 52, y: 80, page: 'age-band' })).toBe(true);
  });

  it.each([
    ['a tap on the same page', { ...first, at: 1150 }],
    ['a tap somewhere else', { ...first, at: 1150, x: 90, page: 'age-band' }],
    ['a tap after a look at the new page', { ...first, at: 1500, page: 'age-band' }],
    ["a label's own click on its field", { ...first, at: 1001, page: 'age-band' }],
  ])('%s is meant', (_, tap) => {
    expect(isEcho(first, tap)).toBe(false);
  });

  it('the first tap of all is meant', () => {
    expect(isEcho(undefined, first)).toBe(false);
  });

  it('no tap waits longer than a moment to be taken', () => {
    fc.assert(
      fc.property(anyTap, anyTap, (before, now) => {
        if (isEcho(before, now)) expect(now.at - before.at).toBeLessThanOrEqual(400);
      }),
      { numRuns: 300 },
    );
  });
});
