import { describe, expect, test } from 'vitest';
import type { Facts } from '../../../src/profile/profile.ts';
import { tasksOfActivities, tasksToTry } from '../../../src/screens/fitter/try-on/tasks-to-try.ts';

const TASKS = ['stand-still', 'walk', 'stairs', 'small-jumps'];
const KIT = ['box'];
const well: Facts = { 'health-asked': 'asked' };
const fell: Facts = { 'health-asked': 'asked', conditions: ['falls-or-unsteady'] };
const sprained: Facts = { 'health-asked': 'asked', ankles: ['over-six-weeks'] };
const unasked: Facts = { 'health-asked': 'skipped' };

describe('what to try at the bench', () => {
  test('a customer with nothing to hold back tries everything the kit allows', () => {
    expect(tasksToTry(TASKS, KIT, well, false)).toEqual({ open: TASKS, held: 0, because: [], mayBeUneven: true });
    expect(tasksToTry(TASKS, [], well, false).open).toEqual(['stand-still', 'walk', 'small-jumps']);
  });

  test('nobody hops after falls, after a sprain, or where health was not asked about', () => {
    for (const facts of [fell, sprained, unasked]) {
      expect(tasksToTry(TASKS, KIT, facts, false)).toMatchObject({ open: ['stand-still', 'walk'], held: 2 });
    }
    expect(tasksToTry(TASKS, KIT, sprained, false).because).toEqual(['ankles:over-six-weeks']);
  });

  test('two different shoes are for standing and a slow walk only', () => {
    expect(tasksToTry(TASKS, KIT, well, true).open).toEqual(['stand-still', 'walk']);
  });

  test('two different shoes are never worn after falls, nor where nobody asked about them', () => {
    expect(tasksToTry(TASKS, KIT, fell, true).mayBeUneven).toBe(false);
    expect(tasksToTry(TASKS, KIT, unasked, true).mayBeUneven).toBe(false);
    expect(tasksToTry(TASKS, KIT, sprained, true).mayBeUneven).toBe(true);
  });

  test('both activities are rehearsed, each task once', () => {
    const rows = [
      { id: 'netball', tasks: ['walk', 'side-step'] },
      { id: 'lifting', tasks: ['stand-firm', 'walk'] },
    ];
    const facts: Facts = { activity: 'lifting', 'second-activity': 'netball' };
    expect(tasksOfActivities(rows, facts)).toEqual(['stand-firm', 'walk', 'side-step']);
    expect(tasksOfActivities(rows, {})).toEqual([]);
  });
});
