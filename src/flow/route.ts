import type { Answer, Answers } from './answers.ts';
import type { Flow, Place, Question } from './format.ts';
import { holds } from './holds.ts';
import { spelledOptions, stillOffered } from './options.ts';

/** Every question of a flow, in the one order they are ever asked in. */
export const questionsOf = (flow: Flow): readonly Question[] => flow.sections.flatMap((section) => section.questions);

/** The route that some answers lead along, and which of them count on it. */
export interface Route {
  /** Ids of the questions asked, in order, answered or not. */
  readonly asked: readonly string[];
  /** The answers in play: given on this route, to options that are offered on it. */
  readonly answers: Answers;
}

/**
 * Follows the answers through the flow. Whether a question is asked depends only on answers that are themselves in play,
 * so an answer left behind on another route cannot steer this one.
 */
export function routeOf(flow: Flow, answers: Answers): Route {
  const asked: string[] = [];
  const counted: Record<string, Answer> = {};
  for (const question of questionsOf(flow)) {
    if (question.askWhen && !holds(question.askWhen, counted)) continue;
    asked.push(question.id);
    const answer = Object.hasOwn(answers, question.id) ? answers[question.id] : undefined;
    const kept = answer === undefined ? undefined : stillOffered(question, answer, counted);
    if (kept !== undefined) counted[question.id] = kept;
  }
  return { asked, answers: counted };
}

/** Ids of the questions in play, in order. */
export const inPlay = (flow: Flow, answers: Answers): readonly string[] => routeOf(flow, answers).asked;

/** The answers that count: those the profile may read. */
export const answersInPlay = (flow: Flow, answers: Answers): Answers => routeOf(flow, answers).answers;

/** The first question in play that still wants an answer. */
export function firstUnanswered(flow: Flow, answers: Answers): string | undefined {
  const route = routeOf(flow, answers);
  return route.asked.find((id) => !Object.hasOwn(route.answers, id));
}

/** Where an interview starts. */
export const firstPlace = (flow: Flow, answers: Answers): Place => inPlay(flow, answers)[0] ?? 'review';

/**
 * Where to go once `question` is answered: the next one on the route, even if it has an answer already, so that going
 * forward retraces what going back showed. During a change from review only questions that still want an answer are
 * asked, and then review again. Review is never reached with a question in play unanswered, nor after an answer that
 * ends the interview.
 */
export function placeAfter(flow: Flow, answers: Answers, question: string, changing: boolean): Place {
  const asked = inPlay(flow, answers);
  const next = changing || !asked.includes(question) ? undefined : asked[asked.indexOf(question) + 1];
  return next ?? firstUnanswered(flow, answers) ?? (isEnded(flow, answers) ? 'finished' : 'review');
}

/** Whether one of the answers in play ends the interview. */
function isEnded(flow: Flow, answers: Answers): boolean {
  const counted = answersInPlay(flow, answers);
  return questionsOf(flow).some((question) =>
    spelledOptions(question).some(
      ({ id, ends }) =>
        ends &&
        holds(
          {
            any: [
              { of: question.id, is: id },
              { of: question.id, includes: id },
            ],
          },
          counted,
        ),
    ),
  );
}

/**
 * Where back leads from a place: to the question before it. During a change from review it leads there, unless the
 * change has opened a question that still wants an answer.
 */
export function placeBefore(flow: Flow, answers: Answers, place: Place, changing = false): Place {
  if (place === 'welcome') return 'welcome';
  if (place === 'finished' || (changing && firstUnanswered(flow, answers) === undefined)) return 'review';
  const asked = inPlay(flow, answers);
  const at = place === 'review' ? asked.length : asked.indexOf(place);
  return asked[at - 1] ?? 'welcome';
}
