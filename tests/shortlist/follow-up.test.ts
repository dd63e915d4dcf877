import { expect, test } from 'vitest';
import { followUpWeeks } from '../../src/shortlist/follow-up.ts';

test('followUpWeeks: a pair is seen again when its easing in is over', () => {
  expect(
    followUpWeeks({
      weeks: [
        { week: 1, share: 0.5 },
        { week: 3, share: 1 },
      ],
    }),
  ).toBe(3);
  expect(followUpWeeks(null)).toBe(2);
});
