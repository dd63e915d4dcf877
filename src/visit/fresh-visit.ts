import type { Answers } from '../flow/answers.ts';
import type { Flow } from '../flow/format.ts';
import type { Visit } from './visit.ts';

/** A visit that has just begun, or whose interview has just ended: answers, and nothing of the fitter's yet. */
export const freshVisit = (flow: Flow, language: string, answers: Answers = {}): Visit => ({
  flow: flow.id,
  flowVersion: flow.version,
  language,
  answers,
  overrides: [],
  observation: {},
  tryOns: [],
});
