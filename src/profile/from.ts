import type { Flow } from '../flow/format.ts';
import { questionsOf } from '../flow/route.ts';

/** The question in a reason's `from` (`body:heel` → `body`); `observation` stands for itself. */
export const questionOf = (from: string): string => from.split(':', 1)[0] ?? from;

/** The part in a reason's `from` (`body:heel` → `heel`), if it names one. */
export function partOf(from: string): string | undefined {
  const at = from.indexOf(':');
  return at < 0 ? undefined : from.slice(at + 1);
}

/** Whether a reason's `from` is a health answer. */
export const isFromHealth = (from: string, flow: Flow): boolean =>
  questionsOf(flow).some((question) => question.health === true && question.id === questionOf(from));
