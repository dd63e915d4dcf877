import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Answer, Answers } from '../../src/flow/answers.ts';
import { holds } from '../../src/flow/holds.ts';
import { offeredOptions, stillOffered } from '../../src/flow/options.ts';
import {
  answersInPlay,
  firstPlace,
  firstUnanswered,
  inPlay,
  placeAfter,
  placeBefore,
  questionsOf,
  routeOf,
} from '../../src/flow/route.ts';
import { anyAnswers } from './any-answer.ts';
import { FITTING, FITTING_TABLES } from './fitting.ts';
import { PICNIC, TOY_TABLES } from './toy-flows.ts';

describe('the route', () => {
  test('asks about an umbrella only when it rains', () => {
    expect(inPlay(PICNIC, { weather: 'rain' })).toEqual(['weather', 'basket', 'umbrella', 'shared']);
    expect(inPlay(PICNIC, { weather: 'sun' })).toEqual(['weather', 'basket', 'shared']);
  });

  test('is not steered by an answer left behind on another route', () => {
    const answers = { weather: 'sun', basket: ['none'], umbrella: 'yes' };
    expect(inPlay(PICNIC, answers)).toContain('shared');
    expect(answersInPlay(PICNIC, answers)).toEqual({ weather: 'sun', basket: ['none'] });
  });

  test('takes out an option that is no longer offered and keeps the rest', () => {
    expect(answersInPlay(PICNIC, { weather: 'sun', basket: ['cake', 'soup'] })).toEqual({
      weather: 'sun',
      basket: ['cake'],
    });
    expect(firstUnanswered(PICNIC, { weather: 'sun', basket: ['soup'] })).toBe('basket');
  });

  test('an adult who first tapped a child’s age keeps the signs that hold for both', () => {
    const signs = questionsOf(FITTING).find(({ id }) => id === 'signs');
    if (!signs) throw new Error('No signs');
    const adult = { 'age-band': '18-to-64' };
    expect(stillOffered(signs, ['numb-feet', 'limping-child'], adult)).toEqual(['numb-feet']);
    expect(offeredOptions(signs, FITTING_TABLES, adult).map(({ id }) => id)).not.toContain('limping-child');
    expect(offeredOptions(signs, FITTING_TABLES, { 'age-band': 'under-6' }).map(({ id }) => id)).toContain(
      'limping-child',
    );
  });

  test('a child of nine is offered no shift work, no safety shoe and no pregnancy, and a worker who tapped that age is asked again', () => {
    const nine = { 'age-band': '6-to-10' };
    const grown = { 'age-band': '18-to-64' };
    const offered = (id: string, answers: Answers) => {
      const question = questionsOf(FITTING).find((each) => each.id === id);
      return question ? offeredOptions(question, FITTING_TABLES, answers).map((option) => option.id) : [];
    };
    for (const [question, option] of [
      ['activity', 'nursing'],
      ['second-activity', 'kitchen'],
      ['now-kind', 'safety-shoe'],
      ['place-rules', 'toe-cap'],
      ['conditions', 'pregnant'],
    ] as const) {
      expect(offered(question, nine)).not.toContain(option);
      expect(offered(question, grown)).toContain(option);
    }
    expect(offered('activity', nine)).toContain('handball');
    expect(firstUnanswered(FITTING, { ...nine, reason: 'worn-out', shelf: 'any', activity: 'nursing' })).toBe(
      'activity',
    );
  });

  test('only who may be under 18 is told that a grown-up answers the signs', () => {
    const signs = questionsOf(FITTING).find(({ id }) => id === 'signs');
    const noted = ['under-6', '6-to-10', '11-to-17', '18-to-64', '65-plus', 'rather-not-say'].filter(
      (age) => signs?.noteWhen && holds(signs.noteWhen, { 'age-band': age }),
    );
    expect(noted).toEqual(['under-6', '6-to-10', '11-to-17', 'rather-not-say']);
  });

  test('offers a table’s rows before what is spelled out beside them', () => {
    const activity = questionsOf(FITTING).find(({ id }) => id === 'activity');
    if (!activity) throw new Error('No activity');
    const ids = offeredOptions(activity, { ...TOY_TABLES }, {}).map(({ id }) => id);
    expect(ids).toEqual(['kite-flying', 'something-else']);
  });
});

describe('next and back', () => {
  const answers = { weather: 'rain', basket: ['cake'], umbrella: 'no', shared: ['ann'] };

  test('go through every question in turn and end in review', () => {
    expect(firstPlace(PICNIC, {})).toBe('weather');
    expect(placeAfter(PICNIC, answers, 'weather', false)).toBe('basket');
    expect(placeAfter(PICNIC, answers, 'shared', false)).toBe('review');
    expect(placeBefore(PICNIC, answers, 'umbrella')).toBe('basket');
    expect(placeBefore(PICNIC, answers, 'weather')).toBe('welcome');
    expect(placeBefore(PICNIC, answers, 'review')).toBe('shared');
  });

  test('a change from review returns there by way of newly needed questions only', () => {
    expect(placeAfter(PICNIC, answers, 'basket', true)).toBe('review');
    expect(placeAfter(PICNIC, { ...answers, basket: ['soup'] }, 'basket', true)).toBe('spoon');
    expect(placeBefore(PICNIC, answers, 'basket', true)).toBe('review');
  });

  test('review is not reached past a question that wants an answer', () => {
    expect(placeAfter(PICNIC, { weather: 'rain', umbrella: 'no', shared: ['ann'] }, 'shared', false)).toBe('basket');
  });
});

const anything = anyAnswers(FITTING, FITTING_TABLES);

describe('whatever is answered', () => {
  test('the order of answers does not matter', () => {
    fc.assert(
      fc.property(anything, fc.infiniteStream(fc.nat()), (answers, shuffle) => {
        const shuffled = Object.entries(answers)
          .map((entry): [number, [string, Answer]] => [shuffle.next().value, entry])
          .sort(([a], [b]) => a - b)
          .map(([, entry]) => entry);
        expect(routeOf(FITTING, Object.fromEntries(shuffled))).toEqual(routeOf(FITTING, answers));
      }),
      { numRuns: 300 },
    );
  });

  test('answers off the route change nothing', () => {
    fc.assert(
      fc.property(anything, anything, (answers, others) => {
        const route = routeOf(FITTING, answers);
        const off = Object.entries(others).filter(([id]) => !route.asked.includes(id));
        expect(routeOf(FITTING, { ...answers, ...Object.fromEntries(off) })).toEqual(route);
        expect(routeOf(FITTING, route.answers)).toEqual(route);
      }),
      { numRuns: 300 },
    );
  });

  test('going forward and back are each other’s reverse', () => {
    fc.assert(
      fc.property(anything, (answers) => {
        const { asked } = routeOf(FITTING, answers);
        for (const [i, id] of asked.slice(0, -1).entries()) {
          expect(placeAfter(FITTING, answers, id, false)).toBe(asked[i + 1]);
          expect(placeBefore(FITTING, answers, asked[i + 1] ?? '')).toBe(id);
        }
      }),
      { numRuns: 100 },
    );
  });
});
