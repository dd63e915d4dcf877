import { expect, test } from 'vitest';
import { afterTryOn } from '../../src/shortlist/after-try-on.ts';

// Mills, Blanch & Vicenzino 2010 (Med Sci Sports Exerc 42, 1966–1971): on a scale of 100 the least change that matters
// was 9.59 by its data and 10.2 by its anchor. Bishop et al. 2020 (J Sports Sci 38, 2100–2107): 9.3 to 9.9.
test.each([
  [60, 60, true],
  [60, 69, true],
  [60, 70, false],
  [70.2, 60, false],
])('comfort of %d and %d is about the same: %s', (one, other, same) => {
  const tryOn = (shoe: string, comfort: number) => ({ shoe, box: shoe, comfort, notes: {}, rubs: [] });
  const { aboutTheSame } = afterTryOn(['a', 'b'], [tryOn('a', one), tryOn('b', other)]);
  expect(aboutTheSame).toEqual(same ? [['a', 'b']] : []);
});
