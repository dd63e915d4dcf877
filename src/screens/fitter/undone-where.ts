import type { BenchTicket } from './bench-ticket.ts';
import type { View } from './views.ts';

type Content = Pick<BenchTicket, 'bench' | 'visit'>;

/**
 * The part of a ticket in which two states of it differ: where a step was made that Undo takes back. Nothing where
 * they are the same.
 *
 * @example changedPart({ visit }, { visit: { ...visit, tryOns: [tried] } }) // 'feet'
 */
export function changedPart(before: Content, after: Content): View | undefined {
  const differs = (key: 'choice' | 'observation' | 'tryOns') =>
    JSON.stringify(before.visit[key]) !== JSON.stringify(after.visit[key]);
  if (differs('observation')) return 'measure';
  if (differs('tryOns')) return 'feet';
  if (differs('choice')) return 'decide';
  if (JSON.stringify(before.visit) !== JSON.stringify(after.visit)) return 'profile';
  return JSON.stringify(before.bench) === JSON.stringify(after.bench) ? undefined : 'line-up';
}
