import type { Answers } from '../flow/answers.ts';
import type { Knowledge } from '../flow/knowledge.ts';
import type { Visit } from '../visit/visit.ts';
import { answersThatCount } from './answers-that-count.ts';
import { factsOfActivities } from './facts-of-activities.ts';
import { factsOfAnswers } from './facts-of-answers.ts';
import { factsOfFloors } from './facts-of-floors.ts';
import { factsOfHealth } from './facts-of-health.ts';
import { factsOfObservation } from './facts-of-observation.ts';
import { factsOfPerson } from './facts-of-person.ts';
import { factsOfToday } from './facts-of-today.ts';
import type { Facts, FactValue } from './profile.ts';
import { byText, type Told } from './told.ts';

/**
 * The flat map that rules read: answers in play, loads and floors blended by their shares, the person, today's shoe,
 * what the fitter saw. Numbers are rounded to thousandths, lists and keys sorted, so that order cannot show.
 *
 * @example
 * factsOf(visit, knowledge)['load-impact'] // 0.6 for road running alone
 */
export const factsOf = (visit: Visit, knowledge: Knowledge): Facts => factsOfTold(toldOf(visit, knowledge));

/** The facts with the answer or observation that each came from. */
export const toldOf = (visit: Visit, knowledge: Knowledge): readonly Told[] =>
  toldOfAnswers(answersThatCount(visit, knowledge.flow), visit, knowledge);

/** The same from answers given apart: those of one activity alone, or of a customer without the fitter's changes. */
export function toldOfAnswers(answers: Answers, visit: Visit, knowledge: Knowledge): readonly Told[] {
  return [
    ...factsOfAnswers(knowledge.flow, answers),
    ...factsOfActivities(answers, knowledge),
    ...factsOfFloors(answers, knowledge),
    ...factsOfPerson(answers),
    ...factsOfToday(answers, visit.observation, knowledge),
    ...factsOfObservation(answers, visit.observation),
    ...factsOfHealth(answers, visit),
  ];
}

export function factsOfTold(told: readonly Told[]): Facts {
  const sorted = [...told].sort((a, b) => byText(a.key, b.key));
  return Object.fromEntries(sorted.map(({ key, value }): [string, FactValue] => [key, value]));
}

/** Where each fact came from, by its key; facts that no answer stands behind are left out. */
export type Origins = ReadonlyMap<string, string>;
export const originsOf = (told: readonly Told[]): Origins =>
  new Map(told.flatMap(({ key, from }): [string, string][] => (from === undefined ? [] : [[key, from]])));
