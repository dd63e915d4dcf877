import { describe, expect, test } from 'vitest';
import { createActor, SimulatedClock } from 'xstate';
import { type IdleTimes, idleMachine, SHORTEST_WARNING } from '../../src/interview/idle.ts';

function watch(input: IdleTimes) {
  const clock = new SimulatedClock();
  const actor = createActor(idleMachine, { input, clock });
  actor.start();
  return { clock, actor, at: () => actor.getSnapshot().value };
}
const TIMES = { quiet: 60_000, warning: 30_000 };

describe('when nobody touches the screen', () => {
  test('it asks, waits, and then everything is wiped', () => {
    const { clock, actor, at } = watch(TIMES);
    clock.increment(59_999);
    expect(at()).toBe('active');
    clock.increment(1);
    expect(at()).toBe('warning');
    clock.increment(29_999);
    expect(at()).toBe('warning');
    clock.increment(1);
    expect(at()).toBe('wiped');
    expect(actor.getSnapshot().status).toBe('done');
  });

  test('a touch starts the wait anew', () => {
    const { clock, actor, at } = watch(TIMES);
    clock.increment(50_000);
    actor.send({ type: 'stir' });
    clock.increment(50_000);
    expect(at()).toBe('active');
  });

  test('a touch during the warning goes on as before', () => {
    const { clock, actor, at } = watch(TIMES);
    clock.increment(85_000);
    actor.send({ type: 'stir' });
    expect(at()).toBe('active');
    clock.increment(59_999);
    expect(at()).toBe('active');
  });

  test('“start over” on the warning wipes at once', () => {
    const { clock, actor, at } = watch(TIMES);
    clock.increment(60_000);
    actor.send({ type: 'wipe' });
    expect(at()).toBe('wiped');
  });

  test('the warning stands for twenty seconds at least, whatever was asked', () => {
    const { clock, at } = watch({ quiet: 1000, warning: 5 });
    clock.increment(1000);
    clock.increment(SHORTEST_WARNING - 1);
    expect(at()).toBe('warning');
    clock.increment(1);
    expect(at()).toBe('wiped');
  });
});
