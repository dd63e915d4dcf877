import { assign } from 'xstate';
import type { Answer } from '../flow/answers.ts';
import type { Flow, Place } from '../flow/format.ts';
import { offeredOptions, type Tables } from '../flow/options.ts';
import { firstPlace, firstUnanswered, placeAfter, placeBefore, questionsOf, routeOf } from '../flow/route.ts';
import { isAnswer } from '../flow/valid-answer.ts';
import type { InterviewEvent } from './interview-events.ts';
import type { InterviewState } from './interview-state.ts';

type About = { readonly context: InterviewState };
type Given = { readonly question: string; readonly value: Answer };

/** What the names in the machine stand for. Every place is computed by `src/flow/route.ts`; nothing here has a view of its own. */
export const implementations = (flow: Flow, tables: Tables) => ({
  guards: {
    isAt: ({ context }: About, place: Place) => context.at === place,
    isAnswerHere: ({ context }: About, { question, value }: Given) =>
      context.at === question && isOffered(flow, tables, context, question, value),
    isInPlay: ({ context }: About, question: string) => routeOf(flow, context.answers).asked.includes(question),
    isOpen: ({ context }: About, place: Place) => isOpen(flow, context, place),
    isComplete: ({ context }: About) => firstUnanswered(flow, context.answers) === undefined,
  },
  actions: {
    record: assign<InterviewState, InterviewEvent, Given, InterviewEvent, never>(({ context }, { question, value }) => {
      const answers = { ...context.answers, [question]: value };
      const at = placeAfter(flow, answers, question, context.changing);
      return { answers, at, changing: context.changing && at !== 'review' && at !== 'finished' };
    }),
    stepBack: assign<InterviewState, InterviewEvent, undefined, InterviewEvent, never>(({ context }) => {
      const at = placeBefore(flow, context.answers, context.at, context.changing);
      return { at, changing: context.changing && at !== 'review' && at !== 'welcome' };
    }),
    toFirst: assign<InterviewState, InterviewEvent, undefined, InterviewEvent, never>(({ context }) => ({
      at: firstPlace(flow, context.answers),
      changing: false,
    })),
    toChange: assign<InterviewState, InterviewEvent, string, InterviewEvent, never>((_, question) => ({
      at: question,
      changing: true,
    })),
    toPlace: assign<InterviewState, InterviewEvent, Place, InterviewEvent, never>((_, at) => ({ at, changing: false })),
    toUnanswered: assign<InterviewState, InterviewEvent, undefined, InterviewEvent, never>(({ context }) => ({
      at: firstUnanswered(flow, context.answers) ?? 'review',
      changing: true,
    })),
    toFinished: assign<InterviewState, InterviewEvent, undefined, InterviewEvent, never>({ at: 'finished' }),
  },
});

function isOffered(flow: Flow, tables: Tables, state: InterviewState, id: string, value: Answer): boolean {
  const question = questionsOf(flow).find((each) => each.id === id);
  if (!question) return false;
  const offered = offeredOptions(question, tables, routeOf(flow, state.answers).answers);
  return isAnswer(question, value, tables, offered);
}

function isOpen(flow: Flow, { answers }: InterviewState, place: Place): boolean {
  if (place === 'welcome') return true;
  if (place === 'review') return firstUnanswered(flow, answers) === undefined;
  return routeOf(flow, answers).asked.includes(place);
}
