import type { Answer, Answers } from '../flow/answers.ts';
import type { OneOf, Question } from '../flow/format.ts';
import type { Basis, Knowledge } from '../flow/knowledge.ts';
import { questionsOf } from '../flow/route.ts';
import { partOf, questionOf } from '../profile/from.ts';
import type { Profile, Reason } from '../profile/profile.ts';
import { effectiveAnswers } from '../visit/effective.ts';
import type { Visit } from '../visit/visit.ts';
import type { WhatIf } from './shortlist.ts';

/**
 * Answers that a person might well have given otherwise. Who they are, what they do, how they are, what they wore
 * and what was seen stay as they are: "if you were younger" helps nobody choose.
 */
const OPEN_TO_CHANGE: readonly Basis[] = ['liking', 'place', 'floor'];

/** The most answers tried, so that the cost is bounded whatever the flow holds. */
export const MOST_TRIED = 24;

/** One answer given otherwise. */
interface Change extends Omit<WhatIf, 'shoe'> {
  readonly value: Answer;
}

/**
 * The one answer whose change would bring another pair first, looked for among the answers behind the most important
 * needs. Nothing when no single change does, within the bound.
 *
 * @param first the shoe that comes first now
 * @param firstWith which shoe would come first for a changed visit; nothing when that visit has no line-up
 */
export function whatIf(
  first: string,
  profile: Profile,
  visit: Visit,
  knowledge: Knowledge,
  firstWith: (changed: Visit) => string | undefined,
): WhatIf | undefined {
  let tried = 0;
  for (const { value, ...change } of changesTo(profile, visit, knowledge)) {
    if (tried === MOST_TRIED) return undefined;
    tried += 1;
    const override = { question: change.question, value, by: 'what-if', reason: 'what-if' };
    const shoe = firstWith({ ...visit, overrides: [...visit.overrides, override] });
    if (shoe !== undefined && shoe !== first) return { ...change, shoe };
  }
  return undefined;
}

/** Single changes to the answers in play that are open to change, those behind the most important needs first. */
function* changesTo(profile: Profile, visit: Visit, knowledge: Knowledge): Generator<Change> {
  const answers = effectiveAnswers(visit, knowledge.flow);
  const questions = new Map(questionsOf(knowledge.flow).map((question) => [question.id, question]));
  const basis = new Map(knowledge.rules.map((rule) => [rule.id, rule.basis]));
  const open = ({ rule }: Reason) => OPEN_TO_CHANGE.includes(basis.get(rule) as Basis);
  const behind = [...profile.needs, ...profile.musts].flatMap(({ reasons }) => reasons).filter(open);
  for (const from of new Set(behind.map((reason) => reason.from))) {
    const question = questions.get(questionOf(from));
    if (question !== undefined && !question.health) yield* otherAnswers(question, partOf(from), answers);
  }
}

function* otherAnswers(question: Question, part: string | undefined, answers: Answers): Generator<Change> {
  const { id } = question;
  const given = answers[id];
  if (given === undefined) return;
  if (question.kind === 'yes-no') {
    for (const option of ['yes', 'no']) if (option !== given) yield { question: id, option, value: option };
  } else if (question.kind === 'one-of') {
    for (const option of spelledOut(question)) if (option !== given) yield { question: id, option, value: option };
  } else if (question.kind === 'against-today') {
    const liked = given as Readonly<Record<string, string>>;
    const choices = question.properties.find((property) => property.id === part)?.choices ?? [];
    for (const option of choices)
      if (part !== undefined && option !== liked[part])
        yield { question: id, property: part, option, value: { ...liked, [part]: option } };
  } else if (question.kind === 'some-of') {
    const chosen = given as readonly string[];
    if (chosen.length > 1)
      for (const option of chosen)
        yield { question: id, option, without: true, value: chosen.filter((each) => each !== option) };
  } else if (question.kind === 'shares') {
    const shares = Object.entries(given as Readonly<Record<string, string>>);
    if (shares.length > 1)
      for (const [option] of shares)
        yield {
          question: id,
          option,
          without: true,
          value: Object.fromEntries(shares.filter(([each]) => each !== option)),
        };
  }
}

/** Options of a table (activities, floors) would make it a different visit; those shown only at times may not be offered. */
function spelledOut({ options }: OneOf): readonly string[] {
  return 'table' in options ? [] : options.filter(({ showWhen }) => showWhen === undefined).map(({ id }) => id);
}
