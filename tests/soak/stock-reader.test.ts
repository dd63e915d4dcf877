import fc from 'fast-check';
import { expect, test } from 'vitest';
import { messyList } from '../stock/messy-lists.ts';
import { survives } from '../stock/round-trip.ts';

test('a hundred thousand messy lists never throw, and what loads is written and read back the same', {
  timeout: 3_600_000,
}, () => {
  let boxes = 0;
  fc.assert(
    fc.property(
      fc.oneof(
        { arbitrary: messyList, weight: 9 },
        { arbitrary: fc.string({ unit: 'binary' }).map((text) => ({ text })), weight: 1 },
      ),
      ({ text }) => {
        boxes += survives(text);
      },
    ),
    { numRuns: 100_000, seed: Number(process.env['LACEWING_SEED'] ?? 20261126) },
  );
  expect(boxes).toBeGreaterThan(10_000);
});
