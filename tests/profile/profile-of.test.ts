import { describe, expect, it } from 'vitest';
import type { Answers } from '../../src/flow/answers.ts';
import { ask, rule, shift, TOY, withRules } from './toy-knowledge.ts';
import { change, profileFor, profileOfAnswers, visitOf } from './toy-visit.ts';

const FINE = { signs: ['none'], conditions: ['none'] } as const;
const need = (answers: Answers, attribute: string, knowledge = TOY) =>
  profileOfAnswers(answers, knowledge).needs.find((each) => each.attribute === attribute);

describe('what a visit comes to', () => {
  it('somebody with nothing wrong gets a shortlist', () => {
    expect(profileOfAnswers({ ...FINE, activity: 'road-running' })).toMatchObject({
      outcome: 'shortlist',
      hold: 'none',
    });
  });
  it('a stop sign refers, and says which answer made it so', () => {
    const profile = profileOfAnswers({ ...FINE, signs: ['hot-swollen-leg'], inside: ['prosthesis'] });
    expect(profile).toMatchObject({ outcome: 'refer', hold: 'today' });
    expect(profile.outcomeReasons?.map((reason) => reason.from)).toEqual(['signs:hot-swollen-leg']);
  });
  it('of two signs the more urgent one holds', () => {
    expect(profileOfAnswers({ ...FINE, signs: ['numb-feet', 'four-steps'] }).hold).toBe('now');
  });
  it('a prosthesis is for the fitter first', () => {
    expect(profileOfAnswers({ ...FINE, activity: 'football-grass', inside: ['prosthesis'] }).outcome).toBe(
      'fitter-first',
    );
  });
  it('football on grass is for another kind of footwear, and it says which', () => {
    expect(profileOfAnswers({ ...FINE, activity: 'football-grass' })).toMatchObject({
      outcome: 'other-footwear',
      otherFootwear: 'studs',
    });
  });
  it('a toe cap that the workplace asks for is another kind of footwear', () => {
    expect(profileOfAnswers({ ...FINE, 'place-rules': ['toe-cap'] })).toMatchObject({
      outcome: 'other-footwear',
      otherFootwear: 'toe-cap',
    });
  });
  it('somebody whose pair is fine keeps it', () => {
    expect(profileOfAnswers({ ...FINE, reason: 'check-mine', 'now-troubles': ['none'] }).outcome).toBe('keep-yours');
  });
});

describe('the hold', () => {
  it('is skipped where health was not asked about', () => {
    expect(profileOfAnswers({}).hold).toBe('skipped');
    expect(profileOfAnswers({ signs: ['rather-not-say'] }).hold).toBe('skipped');
  });
  it('that travelled without its answers still holds', () => {
    expect(profileFor(visitOf({}, { hold: 'today' }))).toMatchObject({ hold: 'today', outcome: 'refer' });
    expect(profileFor(visitOf({}, { hold: 'none' })).hold).toBe('none');
  });
  it("a clinician's clearance lifts what stops the choosing", () => {
    const clearance = { by: 'Fitter', reason: 'letter from a clinic' };
    const profile = profileFor(visitOf({ ...FINE, signs: ['numb-feet'] }, { clearance }));
    expect(profile).toMatchObject({ hold: 'none', outcome: 'shortlist' });
    expect(profile.cautions.find((each) => each.code === 'see-before-choosing')?.cleared).toBe(true);
    expect(profileFor(visitOf({ ...FINE, signs: ['numb-feet', 'hot-swollen-leg'] }, { clearance })).hold).toBe('today');
    expect(profileFor(visitOf({}, { clearance, hold: 'before-choosing' })).outcome).toBe('shortlist');
  });
  it("a fitter's change to another answer cannot lift it either", () => {
    const visit = visitOf(
      { ...FINE, signs: ['numb-feet'], conditions: ['diabetes'] },
      { overrides: [change('conditions', ['none'])] },
    );
    expect(profileFor(visit).hold).toBe('today');
  });
});

describe('needs', () => {
  it('grow with the load', () => {
    const running = need({ activity: 'road-running' }, 'lug-depth');
    const trail = need({ activity: 'trail-running', floors: { 'rocky-trail': 'mostly' } }, 'lug-depth');
    expect(trail?.importance).toBeGreaterThan(running?.importance ?? 0);
  });
  it('come with reason, rule, source and grade', () => {
    expect(need({ activity: 'lifting' }, 'drop')?.reasons[0]).toEqual({
      from: 'activity',
      rule: 'squat-firm',
      source: 'common-practice',
      grade: 'common-practice',
    });
  });
  it("a wish moves away from today's shoe where that is known", () => {
    const asks = withRules(
      rule('lighter', {
        basis: 'liking',
        when: { of: 'liking-weight', is: 'lighter' },
        asks: [shift('mass', -40, 0.7)],
      }),
    );
    // Today's usual mass in the toy table is 280 g, so 240 g with a step of 30 g about it.
    expect(need({ 'now-kind': 'road-cushioned', liking: { weight: 'lighter' } }, 'mass', asks)?.ideal).toEqual([
      225, 255,
    ]);
  });
  it('softer than a firm shoe is no less soft than what the activity asks', () => {
    const answers = { activity: 'rope-skipping', 'now-kind': 'court' } as const;
    const without = need(answers, 'cushion')?.ideal ?? [0, 0];
    const softer = need({ ...answers, liking: { cushion: 'softer' } }, 'cushion')?.ideal ?? [0, 0];
    expect(softer[0]).toBeGreaterThanOrEqual(without[0]);
  });
  it('what matters most matters one and a half times as much, and says so', () => {
    // A wish of any kind: without one, nobody is asked what matters most.
    const answers = { activity: 'rope-skipping', liking: { collar: 'same' } } as const;
    const most = need({ ...answers, 'matters-most': ['cushion'] }, 'cushion');
    expect(most?.importance).toBeCloseTo((need(answers, 'cushion')?.importance ?? 0) * 1.5, 2);
    expect(most?.raisedBy).toBe('matters-most:cushion');
  });
  it('liking yields to an event within four weeks', () => {
    const answers = { activity: 'road-running', liking: { cushion: 'softer' } } as const;
    const eventful = need({ ...answers, lately: ['event-four-weeks'] }, 'cushion');
    expect(eventful?.reasons.some((reason) => reason.rule === 'softer')).toBe(false);
  });
  it('a rule that no answer stands behind asks for nothing', () => {
    const general = withRules(
      rule('general', { asks: [ask('drop', [4, 8], 0.5)], musts: [{ attribute: 'washable', value: true }] }),
    );
    expect(profileOfAnswers({}, general)).toMatchObject({ needs: [], musts: [] });
    expect(profileOfAnswers({ activity: 'tennis' }, general).needs[0]?.reasons[0]?.from).toBe('activity');
  });
});

describe('beside the needs', () => {
  it('one must keeps every reason for it', () => {
    const profile = profileOfAnswers({ floors: { 'hall-vinyl': 'mostly' }, 'place-rules': ['non-marking'] });
    expect(profile.musts.map((must) => [must.attribute, must.value])).toEqual([['non-marking', true]]);
    expect(profile.musts[0]?.reasons.map((reason) => reason.from)).toEqual(['floors', 'place-rules:non-marking']);
  });
  it('cautions stand by urgency, with those for everybody among them', () => {
    const profile = profileOfAnswers({ ...FINE, signs: ['numb-feet', 'four-steps'] });
    expect(profile.cautions.map((each) => each.code)).toEqual(['see-now', 'see-before-choosing', 'ease-in', 'air-dry']);
  });
  it('a caution that follows from a health answer is marked as health', () => {
    const profile = profileOfAnswers({ signs: ['none'], conditions: ['pregnant'] });
    expect(profile.cautions.find((each) => each.code === 'measure-again')?.health).toBe(true);
    expect(profile.cautions.find((each) => each.code === 'ease-in')?.health).toBe(false);
  });
  it('a slipping heel gets a lacing to try first', () => {
    expect(profileOfAnswers({ 'now-troubles': ['heel-slips'] }).advice).toMatchObject([
      { code: 'heel-lacing', kind: 'lacing' },
    ]);
  });
  it('two strong needs that cannot both be met are named', () => {
    const knowledge = withRules(
      rule('firm', { when: { answered: 'activity' }, grade: 'strong', asks: [ask('cushion', [1, 2], 0.6)] }),
      rule('soft', {
        basis: 'floor',
        when: { answered: 'floors' },
        grade: 'strong',
        asks: [ask('cushion', [4, 5], 0.5)],
      }),
    );
    const both = profileOfAnswers({ activity: 'lifting', floors: { concrete: 'mostly' } }, knowledge);
    expect(both.conflicts).toMatchObject([
      { attribute: 'cushion', between: [{ from: 'activity' }, { from: 'floors' }] },
    ]);
    expect(profileOfAnswers({ activity: 'lifting' }, knowledge).conflicts).toEqual([]);
  });
  it('a wish that what is asked already meets is no conflict', () => {
    const knowledge = withRules(
      rule('soft', { when: { answered: 'activity' }, grade: 'strong', asks: [ask('cushion', [4, 5], 0.6)] }),
      rule('softer', {
        basis: 'liking',
        when: { of: 'liking-cushion', is: 'softer' },
        asks: [shift('cushion', 0.5, 0.9)],
      }),
    );
    expect(
      profileOfAnswers({ activity: 'tennis', 'now-kind': 'court', liking: { cushion: 'softer' } }, knowledge).conflicts,
    ).toEqual([]);
  });
});

describe('roll seen while moving', () => {
  const roll = { left: 'in', right: 'in', by: 'Fitter', during: 'walk' } as const;
  const support = (answers: Answers) =>
    profileFor(visitOf(answers, { observation: { roll } })).needs.find((each) => each.attribute === 'medial-support');
  it('counts only with a history of support and a wish about the arch', () => {
    expect(support({})).toBeUndefined();
    expect(support({ 'past-pairs': ['support-helped'] })).toBeUndefined();
    expect(support({ 'past-pairs': ['support-helped'], liking: { arch: 'more' } })?.reasons[0]?.from).toBe(
      'observation',
    );
  });
});

it('a size is advised with the toe room of the activity', () => {
  const room = TOY.activities.find((row) => row.id === 'lifting')?.toeRoom.range;
  expect(profileOfAnswers({ activity: 'lifting' }).size.toeRoom).toEqual(room);
});
