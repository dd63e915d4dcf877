import type { Answers } from '../../src/flow/answers.ts';
import type { Knowledge } from '../../src/flow/knowledge.ts';
import { factsOf } from '../../src/profile/facts.ts';
import type { Profile } from '../../src/profile/profile.ts';
import { profileOf } from '../../src/profile/profile-of.ts';
import type { Visit } from '../../src/visit/visit.ts';
import { TOY } from './toy-knowledge.ts';

/** An invented visit with these answers and nothing else. */
export const visitOf = (answers: Answers, more: Partial<Visit> = {}): Visit => ({
  flow: 'fitting',
  flowVersion: 1,
  language: 'en',
  answers,
  overrides: [],
  observation: {},
  tryOns: [],
  ...more,
});

export const profileFor = (visit: Visit, knowledge: Knowledge = TOY): Profile =>
  profileOf(factsOf(visit, knowledge), visit, knowledge);

export const profileOfAnswers = (answers: Answers, knowledge: Knowledge = TOY): Profile =>
  profileFor(visitOf(answers), knowledge);

export const change = (question: string, value: Answers[string]) => ({
  question,
  value,
  by: 'Fitter',
  reason: 'asked again',
});
