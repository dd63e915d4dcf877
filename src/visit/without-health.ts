import type { Flow } from '../flow/format.ts';
import { questionsOf } from '../flow/route.ts';
import type { Hold, Visit } from './visit.ts';

/**
 * The visit as it is kept when the customer did not hand it to the fitter: no health answer, no override of one, and
 * one word, `hold`, that keeps a referral a referral.
 *
 * @example withoutHealth(visit, 'today', flow).answers.signs // undefined
 */
export function withoutHealth(visit: Visit, hold: Hold, flow: Flow): Visit {
  const health = new Set(
    questionsOf(flow)
      .filter((question) => question.health)
      .map(({ id }) => id),
  );
  const { printHealth: _printHealth, clearance: _clearance, ...rest } = visit;
  return {
    ...rest,
    answers: Object.fromEntries(Object.entries(visit.answers).filter(([id]) => !health.has(id))),
    overrides: visit.overrides.filter(({ question }) => !health.has(question)),
    hold,
  };
}
