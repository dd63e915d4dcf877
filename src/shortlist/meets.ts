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

interface Weighed {
  readonly weight: number;
  readonly meets: Meets;
}

/** All that can be said, the most important first. */
export const inOrder = (all: readonly Weighed[]): readonly Meets[] =>
  all.toSorted((a, b) => b.weight - a.weight).map(({ meets }) => meets);

/**
 * The most important of what can be said, in order. Whatever rests on a health answer alone is one more than the
 * rest, so that a card which may not name it still has as much to say as any other.
 */
export function mostImportant(weighed: readonly Weighed[]): readonly Meets[] {
  const all = inOrder(weighed);
  const plain = all.filter(({ health }) => !health).slice(0, MOST_SAID);
  const top = all.slice(0, MOST_SAID);
  return all.filter((each) => top.includes(each) || plain.includes(each));
}

/** Nothing that rests on a health answer alone, unless the customer agreed to have it named. */
export function tellable(meets: readonly Meets[], mayNameHealth: boolean): readonly Meets[] {
  return meets.filter(({ health }) => mayNameHealth || !health);
}

/** What is said of one pair by itself: the three that weigh most, of what may be told. */
export function said(meets: readonly Meets[], mayNameHealth: boolean): readonly Meets[] {
  return tellable(meets, mayNameHealth).slice(0, MOST_SAID);
}
