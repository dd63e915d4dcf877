import { questionOf } from '../profile/from.ts';
import type { Reason } from '../profile/profile.ts';
import type { Meets } from './shortlist.ts';

/** The most reasons, and the most misgivings, said of one pair: what a customer reads standing up. */
export const MOST_SAID = 3;

/**
 * Where a need is traced to: its first reason that tells nothing about health, else its first. A need with no reason
 * left is no need, so what rests on an answer goes with it.
 */
export function tracedTo(reasons: readonly Reason[], health: ReadonlySet<string>): { from: string; health?: true } {
  const plain = reasons.find(({ from }) => !health.has(questionOf(from)));
  if (plain !== undefined) return { from: plain.from };
  const first = reasons[0];
  return first === undefined ? { from: 'stock' } : { from: first.from, health: true };
}

/**
 * The most important of what can be said, in order. Whatever rests on a health answer alone is one more than the
 * rest, so that a card which may not name it still has as much to say as any other.
 */
export function mostImportant(all: readonly { readonly weight: number; readonly meets: Meets }[]): readonly Meets[] {
  const inOrder = all.toSorted((a, b) => b.weight - a.weight).map(({ meets }) => meets);
  const plain = inOrder.filter(({ health }) => !health).slice(0, MOST_SAID);
  const top = inOrder.slice(0, MOST_SAID);
  return inOrder.filter((each) => top.includes(each) || plain.includes(each));
}

/**
 * What to print or show of a pair's reasons or misgivings: at most three, and nothing that rests on a health answer
 * alone unless the customer agreed to have it named.
 */
export function said(meets: readonly Meets[], mayNameHealth: boolean): readonly Meets[] {
  return meets.filter(({ health }) => mayNameHealth || !health).slice(0, MOST_SAID);
}
