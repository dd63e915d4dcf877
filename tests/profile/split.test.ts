import { describe, expect, it } from 'vitest';
import { pullBetween } from '../../src/profile/pull-between.ts';
import { MAIN } from './main-knowledge.ts';
import { TOY } from './toy-knowledge.ts';
import { profileOfAnswers } from './toy-visit.ts';

const need = (ideal: readonly [number, number], importance: number) =>
  ({ attribute: 'cushion', ideal, limits: ideal, importance, reasons: [] }) as const;

describe('two pairs instead of one', () => {
  it('the pull is the gap as a share of the scale, times the lesser importance', () => {
    // The scale of cushion is 1 to 5: a gap of 2 is a half.
    expect(pullBetween([need([4, 5], 0.5)], [need([1, 2], 0.4)])).toBe(0.2);
    expect(pullBetween([need([2, 5], 0.5)], [need([1, 2], 0.4)])).toBe(0);
  });
  it('an indoor-only pair that is also worn to and from becomes two, and the hall rules only the first', () => {
    const answers = { activity: 'netball', 'place-rules': ['indoor-only', 'non-marking'], 'worn-to-and-from': 'yes' };
    const split = profileOfAnswers(answers).split;
    expect(split?.map((part) => part.for)).toEqual(['indoor', 'outdoor']);
    expect(split?.[0]?.musts.map((must) => must.attribute)).toEqual(['non-marking']);
    expect(split?.[1]?.musts).toEqual([]);
    expect(split?.[1]?.needs.flatMap((each) => each.reasons.map((reason) => reason.from))).not.toContain('activity');
    expect(profileOfAnswers({ ...answers, 'worn-to-and-from': 'no' }).split).toBeUndefined();
  });
  it('an activity done now and then gets no pair of its own', () => {
    const answers = { activity: 'road-running', 'second-activity': 'lifting', 'second-share': 'now-and-then' };
    expect(profileOfAnswers(answers, TOY).split).toBeUndefined();
  });
  it.each([
    ['road-running', 'lifting'],
    ['trail-running', 'gym-class'],
    ['hill-walking', 'netball'],
  ])('%s and %s get a line-up each', (activity, second) => {
    const answers = { activity, 'second-activity': second, 'second-share': 'half' };
    const split = profileOfAnswers(answers, MAIN).split;
    expect(split?.map((part) => part.for)).toEqual([activity, second]);
    const from = (part: number) => split?.[part]?.needs.flatMap((each) => each.reasons.map((reason) => reason.from));
    expect(from(0)).not.toContain('second-activity');
    expect(from(1)).toContain('second-activity');
    expect(from(1)).not.toContain('activity');
  });
  it.each([
    ['road-running', 'treadmill-running'],
    ['tennis', 'padel'],
    ['everyday-walking', 'nursing'],
  ])('one pair serves %s and %s', (activity, second) => {
    const answers = { activity, 'second-activity': second, 'second-share': 'half' };
    expect(profileOfAnswers(answers, MAIN).split).toBeUndefined();
  });
});
