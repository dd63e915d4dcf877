import { expect, test } from 'vitest';
import { minimalistIndex, minimalistRise } from '../../src/shortlist/minimalist-index.ts';

// Esculier et al. 2015, J Foot Ankle Res 8:42. The scheme is published; these three shoes are made up to exercise it,
// since no rated example was read.
const HEAVY = { mass: 300, heelStack: 32, drop: 10, devices: 3, bend: 1, twist: 1 };
const MIDDLE = { mass: 240, heelStack: 24, drop: 6, devices: 1, bend: 1.5, twist: 1.5 };
const BARE = { mass: 150, heelStack: 10, drop: 0, devices: 0, bend: 2.5, twist: 2.5 };

test.each([
  ['a tall shoe', HEAVY, 24],
  ['one between', MIDDLE, 56],
  ['a thin one', BARE, 92],
])('the Minimalist Index of %s', (_, shoe, index) => {
  expect(minimalistIndex(shoe)).toBe(index);
});

test('the published ends: 325 g, 32 mm, 13 mm, six devices, stiff is 0; under 125 g, 8 mm, 1 mm, none, folding is 100', () => {
  expect(minimalistIndex({ mass: 325, heelStack: 32, drop: 13, devices: 6, bend: 0, twist: 0 })).toBe(0);
  expect(minimalistIndex({ mass: 124, heelStack: 7.9, drop: 0.9, devices: 0, bend: 2.5, twist: 2.5 })).toBe(100);
});

test('a rise counts only what is known of both shoes', () => {
  expect(minimalistRise(HEAVY, BARE)).toBe(68);
  expect(minimalistRise({ mass: 300, heelStack: 32, drop: 10 }, { mass: 150, heelStack: 10, drop: 0 })).toBe(44);
  expect(minimalistRise({ mass: 300, heelStack: 32, drop: 10 }, BARE)).toBe(44);
  expect(minimalistRise({ mass: 300, drop: 10 }, BARE)).toBeUndefined();
});
