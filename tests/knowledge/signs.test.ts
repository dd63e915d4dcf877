import { describe, expect, it } from 'vitest';
import type { Answers } from '../../src/flow/answers.ts';
import { MAIN } from '../profile/main-knowledge.ts';
import { profileFor, profileOfAnswers, visitOf } from '../profile/toy-visit.ts';

const telling = (more: Answers): Answers => ({
  reason: 'worn-out',
  activity: 'everyday-walking',
  'second-activity': 'none',
  signs: ['none'],
  conditions: ['none'],
  ...more,
});
const holdOf = (more: Answers) => profileOfAnswers(telling(more), MAIN).hold;

describe('a sign stops as far as it must', () => {
  it.each([
    ['swollen-and-breathless', 'now'],
    ['hot-swollen-leg', 'today'],
    ['four-steps', 'today'],
    ['cold-pale-foot', 'today'],
    ['sore-not-healing', 'today'],
    ['snap-at-heel', 'today'],
    ['numb-feet', 'before-choosing'],
    ['bone-spot', 'before-choosing'],
    ['calf-pain-walking', 'before-choosing'],
    ['operation-or-cast', 'before-choosing'],
  ])('%s: %s', (sign, hold) => {
    expect(holdOf({ signs: [sign] })).toBe(hold);
    expect(profileOfAnswers(telling({ signs: [sign] }), MAIN).outcome).toBe('refer');
  });

  it('a limping child is seen before shoes are chosen', () => {
    expect(holdOf({ 'age-band': '6-to-10', signs: ['limping-child'] })).toBe('before-choosing');
  });

  it('the most urgent of several is the one that holds', () => {
    expect(holdOf({ signs: ['bone-spot', 'hot-swollen-leg'] })).toBe('today');
    expect(holdOf({ signs: ['hot-swollen-leg', 'swollen-and-breathless'] })).toBe('now');
  });
});

describe('two things that are calm alone are urgent together', () => {
  it('a fresh cut alone is only covered', () => {
    const { hold, cautions } = profileOfAnswers(telling({ signs: ['open-skin'] }), MAIN);
    expect(hold).toBe('none');
    expect(cautions.map(({ code }) => code)).toContain('cover-open-skin');
  });

  it('diabetes alone stops nobody', () => expect(holdOf({ conditions: ['diabetes'] })).toBe('none'));

  it('diabetes with a foot sore before is seen by a foot clinic before shoes are chosen', () => {
    const { hold, outcome, cautions } = profileOfAnswers(telling({ conditions: ['diabetes-foot-before'] }), MAIN);
    expect([hold, outcome]).toEqual(['before-choosing', 'refer']);
    expect(cautions.map(({ code }) => code)).toEqual(expect.arrayContaining(['diabetes-foot-clinic', 'diabetes-feet']));
  });

  it.each(['diabetes', 'diabetes-foot-before'])('a cut with %s is for today', (condition) => {
    expect(holdOf({ signs: ['open-skin'], conditions: [condition] })).toBe('today');
  });

  it('a cut with numb feet is for today', () => expect(holdOf({ signs: ['open-skin', 'numb-feet'] })).toBe('today'));

  it('a recent sprain that gives way is seen first; either alone is a caution', () => {
    expect(holdOf({ ankles: ['over-six-weeks', 'gives-way'] })).toBe('before-choosing');
    expect(holdOf({ ankles: ['over-six-weeks'] })).toBe('none');
    expect(holdOf({ ankles: ['gives-way'] })).toBe('none');
  });
});

describe('what is no sign', () => {
  it('both feet swelling by the evening stop nobody, unless pregnant with a headache', () => {
    expect(holdOf({ conditions: ['evening-swelling'] })).toBe('none');
    expect(holdOf({ conditions: ['pregnant', 'evening-swelling'] })).toBe('none');
    expect(holdOf({ conditions: ['pregnant-swelling-headache'] })).toBe('today');
  });

  it('numb only in shoes is first a matter of fit', () => {
    const { hold, advice } = profileOfAnswers(telling({ 'now-troubles': ['numb-in-shoes'] }), MAIN);
    expect(hold).toBe('none');
    expect(advice.map(({ code }) => code)).toEqual(expect.arrayContaining(['loosen-over-the-top', 'size-first']));
  });

  it('a wheelchair and a prosthesis stop nobody; the prosthesis is measured with its shoe first', () => {
    expect(holdOf({ conditions: ['wheelchair'] })).toBe('none');
    const { hold, outcome } = profileOfAnswers(telling({ inside: ['prosthesis'] }), MAIN);
    expect([hold, outcome]).toEqual(['measure-first', 'fitter-first']);
  });
});

describe('a word that travelled without its answers', () => {
  it.each(['now', 'today', 'before-choosing'] as const)('%s still refers', (hold) => {
    const { signs: _signs, conditions: _conditions, ...rest } = telling({});
    const profile = profileFor(visitOf(rest, { hold }), MAIN);
    expect([profile.outcome, profile.hold]).toEqual(['refer', hold]);
  });

  it('an old pair to be measured first still is, by a fitter who was told no more', () => {
    const { signs: _signs, conditions: _conditions, inside: _inside, ...rest } = telling({});
    const profile = profileFor(visitOf(rest, { hold: 'measure-first' }), MAIN);
    expect([profile.outcome, profile.hold]).toEqual(['fitter-first', 'measure-first']);
  });

  it('skipped health is said and refers nobody', () => {
    const { outcome, hold, cautions } = profileOfAnswers(telling({ signs: ['rather-not-say'] }), MAIN);
    expect([outcome, hold]).toEqual(['shortlist', 'skipped']);
    expect(cautions.map(({ code }) => code)).toContain('health-not-asked');
  });
});

it('every stop names whom to see', () => {
  const stops = MAIN.cautions.filter(({ level }) => ['now', 'today', 'before-choosing'].includes(level));
  expect(stops.filter(({ whom }) => whom === undefined)).toEqual([]);
  expect(stops.filter(({ level, whom }) => level === 'now' && whom !== 'emergency')).toEqual([]);
});
