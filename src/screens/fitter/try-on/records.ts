import type { TryOn } from '../../../visit/visit.ts';

/** The record that counts for a shoe: its latest. Earlier ones tell of boxes that did not fit. */
export const recordOf = (tryOns: readonly TryOn[], shoe: string): TryOn | undefined =>
  tryOns.findLast((each) => each.shoe === shoe);

/** Boxes of a shoe tried before the one on the feet now. */
export const earlierOf = (tryOns: readonly TryOn[], shoe: string): readonly TryOn[] =>
  tryOns.filter((each) => each.shoe === shoe).slice(0, -1);

type Change = { readonly [K in keyof Omit<TryOn, 'shoe' | 'box'>]?: TryOn[K] | undefined };

/** The records with one changed, or begun in this box. A value of `undefined` takes the field out. */
export function withRecord(tryOns: readonly TryOn[], shoe: string, box: string, change: Change = {}): readonly TryOn[] {
  const at = tryOns.findLastIndex((each) => each.shoe === shoe);
  const before = tryOns[at] ?? { shoe, box, notes: {}, rubs: [] };
  const after = Object.fromEntries(
    Object.entries({ ...before, box, ...change }).filter(([, value]) => value !== undefined),
  ) as unknown as TryOn;
  return at < 0 ? [...tryOns, after] : tryOns.with(at, after);
}

/**
 * The same shoe in another box: a record of its own, so that what was wrong with the first stays told. Where it stood
 * in the customer's order goes with it; how it felt does not.
 */
export function inAnotherBox(tryOns: readonly TryOn[], shoe: string, box: string): readonly TryOn[] {
  const before = recordOf(tryOns, shoe);
  if (before === undefined) return withRecord(tryOns, shoe, box);
  const { rank, ...rest } = before;
  const fresh: TryOn = { shoe, box, notes: {}, rubs: [], ...(rank === undefined ? {} : { rank }) };
  return [...tryOns.map((each) => (each === before ? rest : each)), fresh];
}

/** One note of a record, or without it. */
export function withNote(record: TryOn | undefined, key: string, value: string | undefined): TryOn['notes'] {
  const { [key]: _before, ...rest } = record?.notes ?? {};
  return value === undefined ? rest : { ...rest, [key]: value };
}

/** The customer's order so far: shoes that were ranked, favourite first. */
export function rankedOf(tryOns: readonly TryOn[]): readonly string[] {
  const shoes = [...new Set(tryOns.map(({ shoe }) => shoe))];
  return shoes
    .flatMap((shoe) => {
      const rank = recordOf(tryOns, shoe)?.rank;
      return rank === undefined ? [] : [{ shoe, rank }];
    })
    .sort((a, b) => a.rank - b.rank)
    .map(({ shoe }) => shoe);
}

/** The records with this order, favourite first; shoes not in it have no rank. */
export function withOrder(tryOns: readonly TryOn[], order: readonly string[]): readonly TryOn[] {
  return tryOns.map((each) => {
    const { rank: _before, ...rest } = each;
    const at = order.indexOf(each.shoe);
    return at >= 0 && recordOf(tryOns, each.shoe) === each ? { ...rest, rank: at + 1 } : rest;
  });
}

/** One place up or down; the ends stay where they are. */
export function moved(order: readonly string[], shoe: string, by: -1 | 1): readonly string[] {
  const at = order.indexOf(shoe);
  const other = order[at + by];
  return at < 0 || other === undefined ? order : order.with(at, other).with(at + by, shoe);
}
