import type { Preference } from '../profile/profile.ts';
import type { Shoe } from '../stock/shoe.ts';
import { LINE_UP } from './line-up.ts';
import { isMadeFor } from './preferred.ts';
import type { MoreWithout } from './shortlist.ts';
import type { Sieved } from './sieve.ts';

/** Nobody gives these up: a shoe of another shelf or in no size at hand is no choice. */
const GIVEN: readonly string[] = ['shelf', 'size'];

/**
 * Where a line-up is short, or holds a pair sold for something else: the one must whose dropping would add most, and
 * how many pairs there would be then. Nothing where no single must would. It is only said; nothing is ever widened.
 *
 * @param picked the shoes of the line-up
 */
export function moreWithout(
  { left, keptOut }: Pick<Sieved, 'left' | 'keptOut'>,
  picked: readonly Shoe[],
  preferences: readonly Preference[],
): MoreWithout | undefined {
  const short = picked.length < LINE_UP;
  const madeForAll = picked.every((shoe) => isMadeFor(shoe, preferences));
  if (picked.length === 0 || (!short && madeForAll)) return undefined;
  const counts = (shoe: Shoe): boolean => madeForAll || isMadeFor(shoe, preferences);
  const [best] = keptOut
    .filter(({ must }) => !GIVEN.includes(must))
    .map(({ must, value, shoes }) => ({ must, value, more: shoes.filter(counts).length }))
    .filter(({ more }) => more > 0)
    .sort((a, b) => b.more - a.more);
  if (best === undefined) return undefined;
  const { must, value, more } = best;
  return { must, value, pairs: left.filter(counts).length + more, ...(madeForAll ? {} : { madeFor: true }) };
}
