import { describe, expect, test } from 'vitest';
import { createActor } from 'xstate';
import type { Answer } from '../../src/flow/answers.ts';
import { implementations } from '../../src/interview/implementations.ts';
import type { InterviewState } from '../../src/interview/interview-state.ts';
import { interviewMachine } from '../../src/interview/machine.ts';
import { FITTING, FITTING_TABLES } from '../flow/fitting.ts';
import { PICNIC, TOY_TABLES } from '../flow/toy-flows.ts';

/** A customer at a toy flow, who says what they do and sees where they are. */
function customer(input?: InterviewState) {
  const actor = createActor(interviewMachine(PICNIC, TOY_TABLES), { input });
  actor.start();
  const at = () => actor.getSnapshot().context.at;
  const send = (event: Parameters<typeof actor.send>[0]) => {
    actor.send(event);
    return at();
  };
  return {
    actor,
    at,
    state: () => actor.getSnapshot().context,
    start: () => send({ type: 'start' }),
    answer: (question: string, value: Answer) => send({ type: 'answer', question, value }),
    back: (question: string) => send({ type: 'back', question }),
    change: (question: string) => send({ type: 'change', question }),
    goTo: (place: string) => send({ type: 'goTo', place }),
    finish: () => send({ type: 'finish' }),
  };
}

function inReview() {
  const ann = customer();
  ann.start();
  ann.answer('weather', 'rain');
  ann.answer('basket', ['cake']);
  ann.answer('umbrella', 'yes');
  ann.answer('shared', ['bo']);
  return ann;
}

describe('an interview', () => {
  test('goes from welcome through every question in play to review and ends', () => {
    const ann = customer();
    expect(ann.at()).toBe('welcome');
    expect(ann.start()).toBe('weather');
    expect(ann.answer('weather', 'sun')).toBe('basket');
    expect(ann.answer('basket', ['cake'])).toBe('shared');
    expect(ann.answer('shared', ['ann', 'bo'])).toBe('review');
    expect(ann.finish()).toBe('finished');
    expect(ann.actor.getSnapshot().status).toBe('done');
  });

  test('stands in a state named after the question and tagged with its section', () => {
    const ann = customer();
    ann.start();
    expect(ann.actor.getSnapshot().matches({ asking: 'weather' })).toBe(true);
    expect(ann.actor.getSnapshot().hasTag('part-1')).toBe(true);
  });

  test('a double tap answers one question', () => {
    const ann = customer();
    ann.start();
    ann.answer('weather', 'rain');
    expect(ann.answer('weather', 'sun')).toBe('basket');
    expect(ann.state().answers).toEqual({ weather: 'rain' });
  });

  test('a double tap on back goes back once', () => {
    const ann = customer();
    ann.start();
    ann.answer('weather', 'rain');
    ann.answer('basket', ['cake']);
    expect(ann.back('umbrella')).toBe('basket');
    expect(ann.back('umbrella')).toBe('basket');
  });

  test('does not take an answer that is not offered', () => {
    const ann = customer();
    ann.start();
    ann.answer('weather', 'sun');
    expect(ann.answer('basket', ['soup'])).toBe('basket');
    expect(ann.answer('basket', ['cake', 'none'])).toBe('basket');
    expect(ann.state().answers).toEqual({ weather: 'sun' });
  });

  test('going back keeps every answer, and going forward again shows them', () => {
    const ann = inReview();
    const before = ann.state().answers;
    expect(ann.back('review')).toBe('shared');
    expect(ann.back('shared')).toBe('umbrella');
    expect(ann.state().answers).toEqual(before);
    expect(ann.answer('umbrella', 'yes')).toBe('shared');
  });

  test('a change from review comes straight back to it', () => {
    const ann = inReview();
    expect(ann.change('shared')).toBe('shared');
    expect(ann.answer('shared', ['cy'])).toBe('review');
    expect(ann.state().changing).toBe(false);
  });

  test('a change from review asks what is newly needed, and nothing else', () => {
    const ann = inReview();
    ann.change('basket');
    expect(ann.answer('basket', ['cake', 'soup'])).toBe('spoon');
    expect(ann.answer('spoon', 'yes')).toBe('review');
  });

  test('backing out of a change leads to review, unless the change has opened a question', () => {
    const ann = inReview();
    ann.change('basket');
    expect(ann.back('basket')).toBe('review');
    ann.change('basket');
    ann.answer('basket', ['soup']);
    expect(ann.back('spoon')).toBe('umbrella');
    expect(ann.answer('umbrella', 'yes')).toBe('spoon');
    expect(ann.answer('spoon', 'no')).toBe('review');
    expect(ann.finish()).toBe('finished');
  });

  test('that was put into review with a question open asks it before it finishes', () => {
    const ann = customer({ answers: { weather: 'sun', shared: ['bo'] }, at: 'review', changing: false });
    expect(ann.finish()).toBe('basket');
    expect(ann.answer('basket', ['cake'])).toBe('review');
    expect(ann.finish()).toBe('finished');
  });

  test('an answer off the route is kept and comes back with its route', () => {
    const ann = inReview();
    ann.change('weather');
    ann.answer('weather', 'sun');
    expect(ann.at()).toBe('review');
    expect(ann.state().answers).toHaveProperty('umbrella', 'yes');
    ann.change('weather');
    expect(ann.answer('weather', 'rain')).toBe('review');
  });

  test('only what is in play can be changed or gone to', () => {
    const ann = inReview();
    expect(ann.change('spoon')).toBe('review');
    expect(ann.goTo('spoon')).toBe('review');
    expect(ann.goTo('basket')).toBe('basket');
    expect(ann.goTo('review')).toBe('review');
    expect(ann.goTo('welcome')).toBe('welcome');
    const bo = customer();
    expect(bo.goTo('review')).toBe('welcome');
  });
});

describe('the machine', () => {
  test('is small: one state per question, and one transition per place from landing', () => {
    const { config } = interviewMachine(FITTING, FITTING_TABLES);
    const questions = FITTING.sections.flatMap((section) => section.questions);
    expect(Object.keys(config.states?.['asking']?.states ?? {})).toEqual(questions.map(({ id }) => id));
    expect(config.states?.['landing']?.always).toHaveLength(questions.length + 3);
  });

  test('is refused before it runs if an action or a guard is missing', () => {
    const { guards, actions } = implementations(PICNIC, TOY_TABLES);
    const { record: _, ...fewerActions } = actions;
    const { isComplete: __, ...fewerGuards } = guards;
    const parts = (some: object) => some as ReturnType<typeof implementations>;
    expect(() => interviewMachine(PICNIC, TOY_TABLES, parts({ guards, actions: fewerActions }))).toThrow('record');
    expect(() => interviewMachine(PICNIC, TOY_TABLES, parts({ guards: fewerGuards, actions }))).toThrow('isComplete');
  });
});
