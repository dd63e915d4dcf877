import type { CardMeets } from './card.ts';

/**
 * What is said of every pair of a line-up: told once above them, since it tells no pair from another. `lists` are the
 * reasons, or the misgivings, of each pair, the most important first. One pair alone shares nothing.
 *
 * @example
 * sharedBy([[{ code: 'mass-meets' }, { code: 'drop-meets' }], [{ code: 'mass-meets' }]])
 * // → [{ code: 'mass-meets' }]
 */
export function sharedBy(lists: readonly (readonly CardMeets[])[]): readonly CardMeets[] {
  const [first, ...more] = lists;
  if (!first || more.length === 0) return [];
  return first.filter(({ code }) => more.every((list) => list.some((each) => each.code === code)));
}

/** A pair's own: what is not shared. */
export const ownOf = (list: readonly CardMeets[], shared: readonly CardMeets[]): readonly CardMeets[] =>
  list.filter(({ code }) => !shared.some((each) => each.code === code));
