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
    const answers = {
      activity: 'netball',
      floors: { 'hall-vinyl': 'mostly', asphalt: 'some' },
      'place-rules': ['indoor-only', 'non-marking'],
      'worn-to-and-from': 'yes',
    };
    const split = profileOfAnswers(answers).split;
    expect(split?.map((part) => part.for)).toEqual(['indoor', 'outdoor']);
    expect(split?.[0]?.musts.map((must) => must.attribute)).toEqual(['non-marking']);
    expect(split?.[1]?.musts).toEqual([]);
    expect(profileOfAnswers({ ...answers, 'worn-to-and-from': 'no' }).split).toBeUndefined();
    // With no floor outside, "only worn inside" has said that it is not worn on the way: nobody is asked.
    expect(profileOfAnswers({ ...answers, floors: { 'hall-vinyl': 'mostly' } }).split).toBeUndefined();
  });
  it.each([
    [{ floors: { 'hall-vinyl': 'mostly', 'rocky-trail': 'some' } }],
    [{ floors: { 'hall-vinyl': 'mostly' } }],
    [{}],
  ])('the hall’s rules bind the pair for the hall and not the pair for the trail: %j', (floors) => {
    const answers = {
      activity: 'badminton',
      'second-activity': 'trail-running',
      'second-share': 'half',
      'place-rules': ['non-marking'],
      ...floors,
    };
    const split = profileOfAnswers(answers, MAIN).split;
    expect(split?.map((part) => part.musts.map((must) => must.attribute))).toEqual([['non-marking'], []]);
    const lugs = split?.[1]?.needs.find(({ attribute }) => attribute === 'lug-depth');
    expect(lugs?.ideal[0]).toBeGreaterThan(2);
  });
  it('a race’s rule goes along where the race is run', () => {
    const answers = { activity: 'road-running', 'second-activity': 'lifting', 'second-share': 'half' };
    const split = profileOfAnswers({ ...answers, 'place-rules': ['stack-40', 'closed-heel'] }, MAIN).split;
    expect(split?.[0]?.musts.map((must) => must.attribute)).toEqual(['stack-cap']);
  });
  it('a workplace’s rules do not bind the pair for the road, whatever the pavement is made of', () => {
    const answers = { activity: 'road-running', 'second-activity': 'lifting', 'second-share': 'half' };
    const floors = { asphalt: 'mostly', concrete: 'some', 'rubber-gym': 'some' };
    const split = profileOfAnswers({ ...answers, floors, 'place-rules': ['non-marking'] }, MAIN).split;
    expect(split?.map((part) => part.musts.map((must) => must.attribute))).toEqual([[], ['non-marking']]);
  });
  it('each pair is to be made for its own activity', () => {
    const answers = { activity: 'road-running', 'second-activity': 'lifting', 'second-share': 'half' };
    const uses = profileOfAnswers(answers, MAIN).split?.map(({ preferences = [] }) =>
      preferences.flatMap((each) => (each.kind === 'use' ? each.parts.flatMap((part) => part.uses[0]) : [])),
    );
    expect(uses).toEqual([['road'], ['lifting']]);
  });
  it('an activity done now and then gets no pair of its own', () => {
    const answers = { activity: 'road-running', 'second-activity': 'lifting', 'second-share': 'now-and-then' };
    expect(profileOfAnswers(answers, TOY).split).toBeUndefined();
  });
  it.each([
    ['road-running', 'lifting'],
    ['trail-running', 'gym-class'],
    ['hill-walking', 'netball'],
    ['road-running', 'tennis'],
    ['netball', 'everyday-walking'],
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
    ['everyday-walking', 'hill-walking'],
    ['lifting', 'mixed-circuit'],
  ])('one pair serves %s and %s', (activity, second) => {
    const answers = { activity, 'second-activity': second, 'second-share': 'half' };
    expect(profileOfAnswers(answers, MAIN).split).toBeUndefined();
  });
});
