import type { Answer, Answers } from '../flow/answers.ts';
import type { Flow, Question } from '../flow/format.ts';
import { stillOffered } from '../flow/options.ts';
import { answersInPlay, questionsOf } from '../flow/route.ts';
import { effectiveAnswers } from '../visit/effective.ts';
import type { Visit } from '../visit/visit.ts';

/**
 * The answers that facts are made of: in play, with the fitter's changes, and with every stop sign that anybody tapped.
 *
 * A fitter's change can add a sign and never take one away: only the customer can untap it, and a clinician's
 * clearance lifts what may be lifted.
 */
export function answersThatCount(visit: Visit, flow: Flow): Answers {
  const counted: Record<string, Answer> = { ...effectiveAnswers(visit, flow) };
  for (const question of questionsOf(flow)) {
    if (question.kind !== 'signs') continue;
    const all = allSigns(question, visit, flow, counted);
    if (all) counted[question.id] = all;
  }
  return counted;
}

function allSigns(question: Question, visit: Visit, flow: Flow, counted: Answers): Answer | undefined {
  const own = answersInPlay(flow, visit.answers)[question.id];
  const changes = visit.overrides
    .filter((change) => change.question === question.id)
    .map((change) => stillOffered(question, change.value, counted));
  const tapped = [own, ...changes].flatMap((answer) => (Array.isArray(answer) ? answer : []));
  const signs = [...new Set(tapped)].filter((id) => isSign(question, id));
  return signs.length > 0 ? signs : counted[question.id];
}

/** `none`, `rather-not-say` and their like stand alone and are no signs. */
function isSign(question: Question, id: unknown): boolean {
  return question.kind === 'signs' && question.options.some((option) => option.id === id && !option.alone);
}
