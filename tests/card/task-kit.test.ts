import { expect, test } from 'vitest';
import { withKit } from '../../src/card/task-kit.ts';

test('withKit: a shop without a ramp is asked for no walk down one', () => {
  expect(withKit(['walk', 'ramp-down', 'stairs'], ['box'])).toEqual(['walk', 'stairs']);
  expect(withKit(['walk', 'rope-turns', 'treadmill-run'], [])).toEqual(['walk']);
});
