import type { Flow } from '../flow/format.ts';
import { questionsOf } from '../flow/route.ts';

/** The question in a reason's `from` (`body:heel` → `body`); `observation` stands for itself. */
export function questionOf(from: string): string {
  const at = from.indexOf(':');
  return at < 0 ? from : from.slice(0, at);
}

/** The part in a reason's `from` (`body:heel` → `heel`), if it names one. */
export function partOf(from: string): string | undefined {
  const at = from.indexOf(':');
  return at < 0 ? undefined : from.slice(at + 1);
}

/** Ids of the questions whose answers are about health. */
export const healthQuestions = (flow: Flow): ReadonlySet<string> =>
  new Set(questionsOf(flow).flatMap((question) => (question.health ? [question.id] : [])));

/** Whether a reason's `from` is a health answer. */
export const isFromHealth = (from: string, flow: Flow): boolean => healthQuestions(flow).has(questionOf(from));
