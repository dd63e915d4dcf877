import { POOL } from './line-up.ts';
import { rankAcceptability, setsFor } from './rank-acceptability.ts';
import type { Scored } from './scored.ts';
import type { LineUp } from './shortlist.ts';
import { variedImportances } from './varied-importances.ts';

/** Sets of importances tried: 2,401, so that a share is within 2 points of the truth 19 times in 20. */
const SETS = setsFor(0.02);

/**
 * How closely the tried importances keep to the stated ones: on average this much per need, which lets the importance
 * of an average need vary by about half of itself (standard deviation). Our choice.
 */
const CLOSENESS = 4;

/** The first pair is the closest on paper when it stays first under at least this share of the importances. Our choice. */
export const SURE_FROM = 2 / 3;

/** A need or a preference, in the order of the parts. */
interface Weighs {
  readonly importance: number;
}

/**
 * Whether the first pair is clearly first on paper, or a close call that the feet decide: importances are guesses, so
 * they are varied around the stated ones, and the first pair is watched. `seed` gives the same draws each time.
 */
export function surenessOf(inOrder: readonly Scored[], needs: readonly Weighs[], seed: number): LineUp['sureness'] {
  if (inOrder.length === 0) return 'none';
  return firstShare(inOrder, needs, seed) >= SURE_FROM ? 'closest-on-paper' : 'feet-decide';
}

/** The share of the tried importances under which the first pair stays first. 1 when it is alone, 0 when nothing counts. */
export function firstShare(inOrder: readonly Scored[], needs: readonly Weighs[], seed: number): number {
  const counting = needs.flatMap((need, j) => (need.importance > 0 ? [{ j, importance: need.importance }] : []));
  const total = counting.reduce((sum, { importance }) => sum + importance, 0);
  const concentrations = counting.map(({ importance }) => (CLOSENESS * counting.length * importance) / total);
  if (inOrder.length === 0) return 0;
  const logs = inOrder.slice(0, POOL).map(({ parts }) => counting.map(({ j }) => Math.log(parts[j] as number)));
  return rankAcceptability(logs, variedImportances(concentrations, SETS, seed), 0)[0] ?? 0;
}
