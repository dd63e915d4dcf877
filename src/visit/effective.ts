import type { Answer, Answers } from '../flow/answers.ts';
import type { Flow } from '../flow/format.ts';
import { answersInPlay } from '../flow/route.ts';
import type { Visit } from './visit.ts';

/**
 * The answers that count: the customer's own, with the fitter's changes over them, limited to those in play on the
 * route they lead along. Of two changes to one answer the later stands.
 *
 * @example
 * ```ts
 * const visit = { answers: { mood: 'calm' }, overrides: [{ question: 'mood', value: 'merry', by: 'Fitter', reason: 'asked again' }] };
 * effectiveAnswers(visit, flow); // { mood: 'merry' }
 * ```
 */
export const effectiveAnswers = (visit: Pick<Visit, 'answers' | 'overrides'>, flow: Flow): Answers =>
  answersInPlay(flow, withOverrides(visit));

/** The customer's answers with the fitter's changes over them, in play or not. */
export function withOverrides({ answers, overrides }: Pick<Visit, 'answers' | 'overrides'>): Answers {
  const changed: Record<string, Answer> = { ...answers };
  for (const { question, value } of overrides) changed[question] = value;
  return changed;
}
