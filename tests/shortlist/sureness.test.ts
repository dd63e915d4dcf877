import { expect, test } from 'vitest';
import { setsFor } from '../../src/shortlist/rank-acceptability.ts';
import { firstShare, surenessOf } from '../../src/shortlist/sureness.ts';
import { need, scored, shoe } from './toy.ts';

const needs = [need('cushion', [3, 4], 0.5), need('mass', [250, 300], 0.5)];

test('setsFor: the documented example', () => {
  expect(setsFor(0.02)).toBe(2401);
});

test('a pair that meets everything is closest on paper beside one that does not', () => {
  const line = scored([shoe('a', { cushion: 3, mass: 270 }), shoe('b', { cushion: 1, mass: 400 })], needs);
  expect(firstShare(line, needs, 1)).toBe(1);
  expect(surenessOf(line, needs, 1)).toBe('closest-on-paper');
});

test('twins are a close call', () => {
  const line = scored([shoe('a', { cushion: 3, mass: 270 }), shoe('b', { cushion: 3, mass: 270 })], needs);
  expect(surenessOf(line, needs, 1)).toBe('feet-decide');
});

test('two pairs that each meet another wish are a close call: importances are guesses', () => {
  const line = scored([shoe('a', { cushion: 3, mass: 345 }), shoe('b', { cushion: 5.5, mass: 270 })], needs);
  expect(firstShare(line, needs, 1)).toBeGreaterThan(0.3);
  expect(firstShare(line, needs, 1)).toBeLessThan(0.7);
});

test('the same seed gives the same share, another seed nearly the same', () => {
  const line = scored([shoe('a', { cushion: 3, mass: 345 }), shoe('b', { cushion: 5.5, mass: 270 })], needs);
  expect(firstShare(line, needs, 42)).toBe(firstShare(line, needs, 42));
  expect(Math.abs(firstShare(line, needs, 42) - firstShare(line, needs, 43))).toBeLessThan(0.06);
});

test('with no pair there is nothing to be sure of', () => {
  expect(surenessOf([], needs, 1)).toBe('none');
});
