import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createActor } from 'xstate';
import { offeredOptions } from '../../src/flow/options.ts';
import { firstUnanswered, inPlay, questionsOf, routeOf } from '../../src/flow/route.ts';
import type { InterviewEvent } from '../../src/interview/interview-events.ts';
import type { InterviewState } from '../../src/interview/interview-state.ts';
import { interviewMachine } from '../../src/interview/machine.ts';
import { restoredInterview, savedInterview } from '../../src/interview/saved.ts';
import { anyAnswer } from '../flow/any-answer.ts';
import { FITTING, FITTING_TABLES } from '../flow/fitting.ts';

const machine = interviewMachine(FITTING, FITTING_TABLES);
const QUESTIONS = questionsOf(FITTING);
const IDS = QUESTIONS.map(({ id }) => id);

/** One thing a customer might do, drawn while the walk goes on; mostly they answer. */
function nextEvent(state: InterviewState, pick: <T>(arbitrary: fc.Arbitrary<T>) => T): InterviewEvent {
  const question = QUESTIONS.find(({ id }) => id === state.at);
  const turn = pick(fc.nat(9));
  if (state.at === 'welcome') return { type: 'start' };
  if (turn === 9) return { type: 'goTo', place: pick(fc.constantFrom(...IDS, 'review')) };
  if (!question)
    return turn < 8
      ? { type: 'change', question: pick(fc.constantFrom(...IDS)) }
      : { type: 'back', question: 'review' };
  if (turn > 6) return { type: 'back', question: state.at };
  const offered = offeredOptions(question, FITTING_TABLES, routeOf(FITTING, state.answers).answers);
  return { type: 'answer', question: state.at, value: pick(anyAnswer(question, offered)) };
}

/** Runs a walk of some steps and looks at every one of them. */
function walks(
  steps: number,
  look: (before: InterviewState, event: InterviewEvent, after: InterviewState, again: InterviewState) => void,
) {
  fc.assert(
    fc.property(fc.gen(), (gen) => {
      const actor = createActor(machine);
      actor.start();
      const state = () => actor.getSnapshot().context;
      for (let step = 0; step < steps; step += 1) {
        const before = state();
        const event = nextEvent(before, (arbitrary) => gen(() => arbitrary));
        actor.send(event);
        const after = state();
        actor.send(event);
        look(before, event, after, state());
      }
    }),
    { numRuns: 220, endOnFailure: true },
  );
}

describe('however a customer wanders', () => {
  test('back never loses an answer, a double event answers one question, and a crash loses nothing', () => {
    walks(25, (before, event, after, again) => {
      expect(Object.keys(after.answers)).toEqual(expect.arrayContaining(Object.keys(before.answers)));
      if (event.type !== 'answer') expect(after.answers).toEqual(before.answers);
      else expect(again).toEqual(after);
      const saved = JSON.parse(JSON.stringify(savedInterview(FITTING, after)));
      expect(restoredInterview(FITTING, FITTING_TABLES, saved)).toEqual({ value: after, findings: [] });
      expect(['welcome', 'review', ...inPlay(FITTING, after.answers)]).toContain(after.at);
      if (after.at === 'review') expect(firstUnanswered(FITTING, after.answers)).toBeUndefined();
    });
  });

  test('answering on from wherever they are ends in review with nothing left open', () => {
    fc.assert(
      fc.property(fc.gen(), (gen) => {
        const actor = createActor(machine);
        actor.start();
        actor.send({ type: 'start' });
        for (let step = 0; step < 40 && actor.getSnapshot().context.at !== 'review'; step += 1) {
          const { at, answers } = actor.getSnapshot().context;
          const question = QUESTIONS.find(({ id }) => id === at);
          if (!question) throw new Error(at);
          const offered = offeredOptions(question, FITTING_TABLES, routeOf(FITTING, answers).answers);
          actor.send({ type: 'answer', question: at, value: gen(() => anyAnswer(question, offered)) });
        }
        const { at, answers } = actor.getSnapshot().context;
        expect(at).toBe('review');
        expect(firstUnanswered(FITTING, answers)).toBeUndefined();
        expect(Object.keys(answers).sort()).toEqual([...inPlay(FITTING, answers)].sort());
      }),
      { numRuns: 100, endOnFailure: true },
    );
  });

  test('changing answers in another order comes to the same', () => {
    fc.assert(
      fc.property(fc.gen(), (gen) => {
        const pick = <T>(arbitrary: fc.Arbitrary<T>) => gen(() => arbitrary);
        const free = QUESTIONS.filter(({ id }) => ['shelf', 'wet', 'budget', 'closure', 'hours'].includes(id));
        const values = free.map(
          (question) => [question, pick(anyAnswer(question, offeredOptions(question, FITTING_TABLES, {})))] as const,
        );
        const shuffled = pick(fc.shuffledSubarray(values, { minLength: values.length }));
        const ended = [values, shuffled].map((order) => {
          const actor = createActor(machine);
          actor.start();
          for (const [{ id }, value] of order) {
            actor.send({ type: 'goTo', place: id });
            actor.send({ type: 'answer', question: id, value });
          }
          return routeOf(FITTING, actor.getSnapshot().context.answers);
        });
        expect(ended[1]).toEqual(ended[0]);
      }),
      { numRuns: 100, endOnFailure: true },
    );
  });
});
