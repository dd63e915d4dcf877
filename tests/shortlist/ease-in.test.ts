import { expect, test } from 'vitest';
import type { Facts } from '../../src/profile/profile.ts';
import { easeInFor } from '../../src/shortlist/ease-in.ts';
import { minimalistIndex, minimalistRise } from '../../src/shortlist/minimalist-index.ts';
import { shoe } from './toy.ts';

const TODAY: Facts = {
  'today-known': true,
  'now-kind': 'road-tall-soft',
  'today-drop': 10,
  'today-heel-stack': 38,
  'today-mass': 290,
};

test('minimalistIndex and minimalistRise: the documented examples', () => {
  expect(minimalistIndex({ mass: 240, heelStack: 24, drop: 6, devices: 1, bend: 1.5, twist: 1.5 })).toBe(56);
  expect(minimalistRise({ mass: 300, heelStack: 32, drop: 10 }, { mass: 150, heelStack: 10, drop: 0 })).toBe(44);
});

test('a heel more than 4 mm lower asks for easing in; 4 mm does not', () => {
  expect(easeInFor(shoe('a', { drop: 5.5 }), TODAY, 'runs')?.triggers).toEqual(['lower-drop']);
  expect(easeInFor(shoe('a', { drop: 6 }), TODAY, 'runs')).toBeNull();
  expect(easeInFor(shoe('a', { drop: 16 }), TODAY, 'runs')).toBeNull();
});

test('the plan starts at a tenth, never falls, and is in the customer’s own unit', () => {
  const plan = easeInFor(shoe('a', { drop: 0 }), TODAY, 'shifts');
  const shares = plan?.weeks.map(({ share }) => share) ?? [];
  expect(plan?.unit).toBe('shifts');
  expect(plan?.source).toBe('warne-2017');
  expect(shares[0]).toBe(0.1);
  expect(shares).toEqual(shares.toSorted((a, b) => a - b));
  expect(shares.length).toBeGreaterThanOrEqual(8);
});

test('a much thinner running shoe asks for a longer plan and shows the fitter its rise on the index', () => {
  const flat = shoe('a', { drop: 0, 'heel-stack': 10, mass: 170, bend: 5, twist: 5 }, { use: ['road'] });
  const plan = easeInFor(flat, TODAY, 'runs');
  expect(plan?.triggers).toEqual(['lower-drop', 'thinner-bendier']);
  // Mass 1 → 4, stack 0 → 4, drop 1 → 5 points; the bend of today's shoe is not known: (3 + 4 + 4) × 4.
  expect(plan?.minimalistRise).toBe(44);
  expect(plan?.weeks.length).toBe(12);
});

test('the index is kept to running and walking shoes', () => {
  const flat = { drop: 8, 'heel-stack': 8, mass: 150 };
  expect(easeInFor(shoe('a', flat, { use: ['court'] }), TODAY, 'matches')).toBeNull();
  expect(easeInFor(shoe('a', flat, { use: ['road'] }), { ...TODAY, 'now-kind': 'court' }, 'runs')).toBeNull();
  expect(easeInFor(shoe('a', flat, { use: ['road'] }), TODAY, 'runs')?.triggers).toEqual(['thinner-bendier']);
});

test('a tall rocker or a plate asks for a shorter plan, unless today’s shoe has one', () => {
  const plated = shoe('a', { rocker: 2, 'forefoot-stiffness': 5 });
  const plan = easeInFor(plated, TODAY, 'runs');
  expect(plan?.triggers).toEqual(['tall-rocker', 'plate']);
  expect(plan?.source).toBe('common-practice');
  expect(plan?.weeks.at(-1)).toEqual({ week: 4, share: 1 });
  expect(easeInFor(plated, { ...TODAY, 'today-rocker': 2, 'today-forefoot-stiffness': 5 }, 'runs')).toBeNull();
});

test('nothing is said of a change that is not known', () => {
  expect(easeInFor(shoe('a', { drop: 0 }), { 'today-known': false }, 'runs')).toBeNull();
  expect(easeInFor(shoe('a'), TODAY, 'runs')).toBeNull();
});
