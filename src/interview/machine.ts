import { setup } from 'xstate';
import type { Flow } from '../flow/format.ts';
import type { Tables } from '../flow/options.ts';
import { implementations } from './implementations.ts';
import type { InterviewEvent } from './interview-events.ts';
import { FRESH, type InterviewState } from './interview-state.ts';
import { refuseMissingNames } from './refuse-missing-names.ts';

/**
 * The interview as a state machine, made from the flow: one empty state per question behind one landing state.
 *
 * An action records the answer and computes the place; `landing` then routes to the state whose place it is, because
 * guards see the context as it was before. So a flow of n questions needs n + a few transitions, not one for every pair.
 * The machine neither saves, ranks nor prints. Start it with the state to go on from, or with nothing.
 */
export function interviewMachine(flow: Flow, tables: Tables, parts = implementations(flow, tables)) {
  const machine = setup({
    types: {
      context: {} as InterviewState,
      events: {} as InterviewEvent,
      input: {} as InterviewState | undefined,
      tags: '' as string,
    },
    guards: parts.guards,
    actions: parts.actions,
  }).createMachine({
    id: 'interview',
    context: ({ input }) => input ?? FRESH,
    initial: 'landing',
    states: {
      landing: {
        always: [...questionIds(flow), 'welcome', 'review', 'finished'].map((place) => ({
          guard: { type: 'isAt' as const, params: place },
          target: isAround(place) ? place : `asking.${place}`,
        })),
      },
      welcome: { on: { start: { target: 'landing', actions: 'toFirst' } } },
      asking: {
        initial: questionIds(flow)[0] ?? '',
        states: Object.fromEntries(
          flow.sections.flatMap(({ id, questions }) => questions.map((question) => [question.id, { tags: [id] }])),
        ),
        on: {
          answer: {
            guard: { type: 'isAnswerHere', params: ({ event }) => event },
            actions: { type: 'record', params: ({ event }) => event },
            target: 'landing',
          },
          back: {
            guard: { type: 'isAt', params: ({ event }) => event.question },
            actions: 'stepBack',
            target: 'landing',
          },
        },
      },
      review: {
        on: {
          back: {
            guard: { type: 'isAt', params: ({ event }) => event.question },
            actions: 'stepBack',
            target: 'landing',
          },
          change: {
            guard: { type: 'isInPlay', params: ({ event }) => event.question },
            actions: { type: 'toChange', params: ({ event }) => event.question },
            target: 'landing',
          },
          finish: [
            { guard: 'isComplete', actions: 'toFinished', target: 'landing' },
            { actions: 'toUnanswered', target: 'landing' },
          ],
        },
      },
      finished: { type: 'final' },
    },
    on: {
      goTo: {
        guard: { type: 'isOpen', params: ({ event }) => event.place },
        actions: { type: 'toPlace', params: ({ event }) => event.place },
        target: '.landing',
      },
    },
  });
  refuseMissingNames(machine.config, parts);
  return machine;
}

const questionIds = (flow: Flow): readonly string[] =>
  flow.sections.flatMap((section) => section.questions.map((question) => question.id));

const isAround = (place: string): boolean => place === 'welcome' || place === 'review' || place === 'finished';
