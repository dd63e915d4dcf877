import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createActor } from 'xstate';
import type { Answers } from '../../src/flow/answers.ts';
import type { Condition } from '../../src/flow/condition.ts';
import { offeredOptions } from '../../src/flow/options.ts';
import { firstUnanswered, inPlay, questionsOf, routeOf } from '../../src/flow/route.ts';
import type { InterviewEvent } from '../../src/interview/interview-events.ts';
import type { InterviewState } from '../../src/interview/interview-state.ts';
import { interviewMachine } from '../../src/interview/machine.ts';
import { restoredInterview, savedInterview } from '../../src/interview/saved.ts';
import { anyAnswer } from '../flow/any-answer.ts';
import { FITTING, FITTING_TABLES } from '../flow/fitting.ts';

const read = (file: string) =>
  JSON.parse(readFileSync(new URL(`../../flows/fitting/${file}.json`, import.meta.url), 'utf8'));
const RULES: readonly { readonly when: Condition; readonly cautions?: readonly string[] }[] = read('rules');
const LEVELS = new Map((read('cautions') as { id: string; level: string }[]).map(({ id, level }) => [id, level]));
const machine = interviewMachine(FITTING, FITTING_TABLES);
const QUESTIONS = questionsOf(FITTING);
const IDS = QUESTIONS.map(({ id }) => id);

const AROUND: readonly string[] = ['review', 'finished'];

/** Signs that want a clinician today or at once: the rules' own cautions of these levels, read from the data. */
const URGENT = new Set(
  RULES.filter(({ cautions }) => cautions?.some((id) => ['now', 'today'].includes(LEVELS.get(id) ?? ''))).flatMap(
    ({ when }) => ('includes' in when ? [`${when.of} ${when.includes}`] : []),
  ),
);
function needsHelpToday(answers: Answers): boolean {
  const counted = routeOf(FITTING, answers).answers;
  return Object.entries(counted).some(
    ([id, answer]) => Array.isArray(answer) && answer.some((option) => URGENT.has(`${id} ${option}`)),
  );
}

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
        if (before.at === 'finished') return;
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
      const restored = restoredInterview(FITTING, FITTING_TABLES, saved);
      // A result is worked out anew: whoever is found there goes on from review.
      if (after.at === 'finished') expect(restored.value).toEqual({ ...after, at: 'review' });
      else expect(restored).toEqual({ value: after, findings: [] });
      if (after.at === 'finished') expect(needsHelpToday(after.answers)).toBe(true);
      else expect(['welcome', 'review', ...inPlay(FITTING, after.answers)]).toContain(after.at);
      if (after.at === 'review') expect(firstUnanswered(FITTING, after.answers)).toBeUndefined();
    });
  });

  test('answering on ends in review with nothing left open, or at once where they need help today', () => {
    fc.assert(
      fc.property(fc.gen(), (gen) => {
        const actor = createActor(machine);
        actor.start();
        actor.send({ type: 'start' });
        for (let step = 0; step < 40 && !AROUND.includes(actor.getSnapshot().context.at); step += 1) {
          const { at, answers } = actor.getSnapshot().context;
          const question = QUESTIONS.find(({ id }) => id === at);
          if (!question) throw new Error(at);
          const offered = offeredOptions(question, FITTING_TABLES, routeOf(FITTING, answers).answers);
          actor.send({ type: 'answer', question: at, value: gen(() => anyAnswer(question, offered)) });
        }
        const { at, answers } = actor.getSnapshot().context;
        expect(at).toBe(needsHelpToday(answers) ? 'finished' : 'review');
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
