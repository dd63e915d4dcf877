import type { Answer, Answers } from '../flow/answers.ts';
import type { Flow, Question } from '../flow/format.ts';
import type { Reason } from '../profile/profile.ts';
import type { Visit } from '../visit/visit.ts';

const DECLINED: readonly string[] = ['rather-not-say', 'no-grown-up', 'skipped'];

/**
 * What tells of health in this visit: the questions about it, and the one word that travelled in their stead. A
 * question that was declined tells nothing, so what follows from that may be said, unless it was answered after all
 * and the fitter wrote it down.
 */
export function healthSources(flow: Flow, visit: Visit): ReadonlySet<string> {
  const answeredLater = new Set(visit.overrides.filter(({ value }) => !isDeclined(value)).map((o) => o.question));
  const told = flow.sections.flatMap((section) =>
    section.questions
      .filter((q) => q.health && (answeredLater.has(q.id) || !isDeclined(visit.answers[q.id])))
      .map((q) => q.id),
  );
  return new Set([...told, 'hold']);
}

function isDeclined(answer: Answer | undefined): boolean {
  if (typeof answer === 'string') return DECLINED.includes(answer);
  return Array.isArray(answer) && answer.some((each) => DECLINED.includes(each));
}

/** Whether something traced to `from` (`body:heel`, `observation`, `liking:cushion`) follows from a health answer. */
export function isHealth(from: string, health: ReadonlySet<string>): boolean {
  return health.has(from.split(':')[0] ?? from);
}

/** Whether nothing but health answers stands behind it. No reason at all counts as health, to be on the safe side. */
export function onlyHealth(reasons: readonly Reason[], health: ReadonlySet<string>): boolean {
  return reasons.every((reason) => isHealth(reason.from, health));
}

/**
 * The visit as it would stand had every health question been answered "none of these".
 *
 * A customer's copy takes its tape measures, size block and advice from this, so that two people who differ only in
 * health answers carry away the same card. The answers are calm ones rather than missing ones, because a missing
 * answer can change which questions come up.
 *
 * @example
 * openVisit(visit, flow).answers.signs // ['none'], whatever was tapped
 */
export function openVisit(visit: Visit, flow: Flow): Visit {
  const questions = flow.sections.flatMap((section) => section.questions).filter((q) => q.health);
  const answers: Answers = {
    ...visit.answers,
    ...Object.fromEntries(questions.map((question) => [question.id, calm(question)])),
  };
  const health = new Set(questions.map((q) => q.id));
  const { hold: _hold, clearance: _clearance, ...rest } = visit;
  return { ...rest, answers, overrides: visit.overrides.filter((o) => !health.has(o.question)) };
}

function calm(question: Question): Answer {
  switch (question.kind) {
    case 'body-map':
    case 'shares':
    case 'against-today':
      return {};
    case 'signs':
    case 'some-of':
      return ['none'];
    case 'yes-no':
      return 'no';
    case 'number':
    case 'one-of':
      return 'not-sure';
  }
}
