import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { factsOf } from '../../src/profile/facts.ts';
import { anyVisit } from './any-visit.ts';
import { TOY } from './toy-knowledge.ts';
import { change, visitOf } from './toy-visit.ts';

const facts = (answers: Parameters<typeof visitOf>[0], more = {}) => factsOf(visitOf(answers, more), TOY);
const road = TOY.activities.find((row) => row.id === 'road-running');
const lifting = TOY.activities.find((row) => row.id === 'lifting');

describe('what somebody does', () => {
  it('a road runner lands with the impact of road running alone', () => {
    expect(road?.loads.impact.value).toBe(0.6);
    expect(facts({ activity: 'road-running' })['load-impact']).toBe(0.6);
  });
  it('half running and half lifting squats half as deep as lifting', () => {
    const half = facts({ activity: 'road-running', 'second-activity': 'lifting', 'second-share': 'half' });
    const squat = ((road?.loads.squat.value ?? 0) + (lifting?.loads.squat.value ?? 0)) / 2;
    expect(half['load-squat']).toBeCloseTo(squat, 3);
  });
  it('lifting now and then weighs less than lifting half of the time', () => {
    const squat = (share: string) =>
      Number(facts({ activity: 'road-running', 'second-activity': 'lifting', 'second-share': share })['load-squat']);
    expect(squat('now-and-then')).toBeLessThan(squat('some'));
    expect(squat('some')).toBeLessThan(squat('half'));
  });
  it('saying one activity twice is saying it once', () => {
    const {
      'second-activity': _,
      'second-share': __,
      ...twice
    } = facts({ activity: 'tennis', 'second-activity': 'tennis', 'second-share': 'half' });
    expect(twice).toEqual(facts({ activity: 'tennis' }));
  });
  it('something else is known by its loads', () => {
    const jumper = facts({ activity: 'something-else', 'else-loads': { jumping: 'some', pedals: 'mostly' } });
    // Jumping bounces 1 when mostly done, and `some` stands for 0.6 (common practice).
    expect(jumper['load-bounce']).toBe(0.6);
    expect(jumper['load-pedals']).toBe(1);
    expect(jumper['load-squat']).toBe(0);
    expect(jumper['activity-group']).toBe('else');
    expect(jumper['else-loads']).toEqual(['jumping', 'pedals']);
  });
  it('something else without a word about it has no loads', () => {
    expect(facts({ activity: 'something-else' })['load-impact']).toBeUndefined();
  });
  it('a footballer on grass needs studs', () => {
    expect(facts({ activity: 'football-grass' })['other-footwear']).toBe('studs');
  });
  it('toe room follows the activity', () => {
    expect([
      facts({ activity: 'road-running' })['toe-room-low'],
      facts({ activity: 'road-running' })['toe-room-high'],
    ]).toEqual(road?.toeRoom.range);
  });
});

describe('where', () => {
  it('floors blend by how often', () => {
    const blended = Number(facts({ floors: { concrete: 'mostly', grass: 'now-and-then' } })['floor-hardness']);
    const hard = Number(facts({ floors: { concrete: 'some' } })['floor-hardness']);
    const soft = Number(facts({ floors: { grass: 'some' } })['floor-hardness']);
    // Weights 1 and 0.3, common practice.
    expect(blended).toBeCloseTo((hard + 0.3 * soft) / 1.3, 3);
  });
  it('without floors the usual ones of the activity stand in', () => {
    expect(facts({ activity: 'road-running' })['floor-hardness']).toBeTypeOf('number');
    expect(facts({ activity: 'road-running', floors: { 'not-sure': 'mostly' } })['floor-hardness']).toBe(
      facts({ activity: 'road-running' })['floor-hardness'],
    );
  });
  it('a hall floor now and then still marks', () => {
    expect(facts({ floors: { concrete: 'mostly', 'hall-vinyl': 'now-and-then' } })['floor-marks']).toBe(true);
  });
  it('how wet is a number, and not sure is none', () => {
    const floors = { grass: 'mostly' };
    expect(facts({ floors, wet: 'sometimes' })['floor-wet']).toBe(0.5);
    expect(facts({ floors, wet: 'not-sure' })['floor-wet']).toBeUndefined();
  });
});

describe('who and what they wear', () => {
  it('a child is a child by age, and by the shelf only where no age was given', () => {
    expect(facts({ 'age-band': '6-to-10' })['person-minor']).toBe(true);
    expect(facts({ 'age-band': '18-to-64', shelf: 'junior' })['person-minor']).toBe(false);
    expect(facts({ 'age-band': 'rather-not-say', shelf: 'junior' })['person-minor']).toBe(true);
    expect(facts({ 'age-band': '65-plus' })['person-older']).toBe(true);
  });
  it('a measured shoe is trusted before what is usual for its kind', () => {
    const answers = { 'now-kind': 'road-cushioned' };
    expect(facts(answers)['today-drop']).toBe(9);
    const measured = facts(answers, {
      observation: { oldPair: { measured: { 'heel-stack': 30, 'forefoot-stack': 24 } } },
    });
    expect(measured['today-drop']).toBe(6);
    expect(measured['today-cushion']).toBe(3.5);
  });
  it('no shoe worn today is known as such', () => {
    expect(facts({ 'now-kind': 'none' })['today-known']).toBe(false);
  });
  it('the longer foot is the length', () => {
    const feet = { left: { length: 262 }, right: { length: 268 }, posture: 'standing', sock: 'worn-sock' } as const;
    expect(facts({}, { observation: { feet } })).toMatchObject({ 'foot-length': 268, 'foot-difference': 6 });
  });
  it('a size is a number with its unit', () => {
    expect(facts({ 'now-size': { value: 42.5, unit: 'eu' } })).toMatchObject({
      'now-size': 42.5,
      'now-size-unit': 'eu',
    });
  });
  it('likings and body marks are facts of their own', () => {
    expect(
      facts({ liking: { cushion: 'softer' }, signs: ['none'], body: { heel: { when: 'this-month', seen: true } } }),
    ).toMatchObject({
      'liking-cushion': 'softer',
      body: ['heel'],
      'body-heel': 'this-month',
      'body-heel-seen': true,
      'body-heel-since': 0.75,
    });
  });
  it('the roll of either foot counts', () => {
    const roll = { left: 'even', right: 'in', by: 'Fitter', during: 'walk' } as const;
    expect(facts({}, { observation: { roll } })).toMatchObject({
      'roll-in': true,
      'roll-out': false,
      'roll-seen': true,
    });
  });
});

describe('health', () => {
  it('is asked, skipped or not reached', () => {
    expect(facts({})['health-asked']).toBe('not-reached');
    expect(facts({ signs: ['rather-not-say'] })['health-asked']).toBe('skipped');
    expect(facts({ signs: ['none'] })['health-asked']).toBe('asked');
    expect(facts({ signs: ['none'], conditions: ['rather-not-say'] })['health-asked']).toBe('skipped');
  });
  it('a clearance needs a name and a reason', () => {
    expect(facts({}, { clearance: { by: 'Fitter', reason: ' ' } })['cleared']).toBe(false);
    expect(facts({}, { clearance: { by: 'Fitter', reason: 'clinic letter' } })['cleared']).toBe(true);
  });
  it("a fitter's change adds a sign and never takes one away", () => {
    expect(facts({ signs: ['four-steps'] }, { overrides: [change('signs', ['none'])] })['signs']).toEqual([
      'four-steps',
    ]);
    expect(facts({ signs: ['none'] }, { overrides: [change('signs', ['bone-spot'])] })['signs']).toEqual(['bone-spot']);
    expect(facts({ signs: ['rather-not-say'] }, { overrides: [change('signs', ['none'])] })['signs']).toEqual(['none']);
  });
  it('a sign that is not offered to this person does not count', () => {
    expect(facts({ 'age-band': '18-to-64', signs: ['limping-child'] })['signs']).toBeUndefined();
  });
});

it('the order of answers and of taps cannot show in the facts', () => {
  const turned = <T>(map: Readonly<Record<string, T>>) => Object.fromEntries(Object.entries(map).reverse());
  fc.assert(
    fc.property(anyVisit(TOY), (visit) => {
      const answers = Object.fromEntries(
        Object.entries(turned(visit.answers)).map(([id, answer]) => [
          id,
          Array.isArray(answer)
            ? [...answer].reverse()
            : typeof answer === 'object' && !('unit' in answer)
              ? turned(answer as Record<string, string>)
              : answer,
        ]),
      );
      expect(JSON.stringify(factsOf({ ...visit, answers } as typeof visit, TOY))).toBe(
        JSON.stringify(factsOf(visit, TOY)),
      );
    }),
    { numRuns: 200 },
  );
});
