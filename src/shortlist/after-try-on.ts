import type { TryOn } from '../visit/visit.ts';

/**
 * Comfort from 0 to 100 less than this apart is "about the same". Mills et al. 2010 (Med Sci Sports Exerc 42,
 * 1966–1971) found the least change that matters at 9.59 and 10.2 mm of 100; ranking was the steadiest of all.
 */
export const COMFORT_APART = 10;

export interface AfterTryOn {
  /** Shoes, the customer's favourite first; those not ranked follow in the line-up's order. */
  readonly order: readonly string[];
  /** Pairs of shoes whose comfort is about the same, as far as numbers were given. */
  readonly aboutTheSame: readonly (readonly [string, string])[];
}

/**
 * Where the pairs stand once they were on the feet: the customer's ranking is the order, whatever paper or numbers
 * say. Of two records of one shoe the later counts.
 *
 * @example
 * afterTryOn(['a', 'b'], [tryOn('a', { rank: 2, comfort: 70 }), tryOn('b', { rank: 1, comfort: 62 })])
 * // { order: ['b', 'a'], aboutTheSame: [['b', 'a']] }
 */
export function afterTryOn(lineUp: readonly string[], tryOns: readonly TryOn[]): AfterTryOn {
  const last = new Map(tryOns.map((tryOn) => [tryOn.shoe, tryOn]));
  const rank = (shoe: string) => last.get(shoe)?.rank ?? Infinity;
  const order = [...new Set([...lineUp, ...last.keys()])]
    .map((shoe, at) => ({ shoe, at }))
    // Two unranked ones are both at infinity, whose difference is no number: their place decides.
    .sort((a, b) => (rank(a.shoe) === rank(b.shoe) ? a.at - b.at : rank(a.shoe) - rank(b.shoe)))
    .map(({ shoe }) => shoe);
  const aboutTheSame = order.flatMap((shoe, i) =>
    order.slice(i + 1).flatMap((other): [string, string][] => {
      const one = last.get(shoe)?.comfort;
      const two = last.get(other)?.comfort;
      if (one === undefined || two === undefined) return [];
      return Math.abs(one - two) < COMFORT_APART ? [[shoe, other]] : [];
    }),
  );
  return { order, aboutTheSame };
}
