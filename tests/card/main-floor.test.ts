import { expect, test } from 'vitest';
import { sampleFacts } from './sample-lines.ts';

const floorOn = (floors: Readonly<Record<string, 'mostly' | 'now-and-then' | 'some'>>): string | undefined =>
  sampleFacts('nurse-on-tiles', 'customer', {
    overrides: [{ question: 'floors', value: floors, by: 'MK', reason: 'asked-again' }],
  }).doing?.floor;

test('a waiter mostly on tiles finds tiles at the head of the card, not the concrete met now and then', () => {
  expect(floorOn({ concrete: 'some', tiles: 'mostly' })).toBe('tiles');
  expect(floorOn({ tiles: 'some', concrete: 'mostly' })).toBe('concrete');
  expect(floorOn({ concrete: 'now-and-then', 'vinyl-lino': 'some' })).toBe('vinyl-lino');
});
