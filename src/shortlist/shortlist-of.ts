import type { Knowledge } from '../flow/knowledge.ts';
import type { Profile, ProfilePart } from '../profile/profile.ts';
import type { BoxFit } from '../sizing/advice.ts';
import type { Shoe, Stock } from '../stock/shoe.ts';
import type { Visit } from '../visit/visit.ts';
import { type BoxesInSize, boxesInSize } from './boxes-in-size.ts';
import { entryOf } from './entry.ts';
import { pickLineUp } from './line-up.ts';
import { moreWithout } from './more-without.ts';
import { meets } from './musts.ts';
import { byOrder } from './order.ts';
import { partsOf, settingOf } from './parts-of.ts';
import { type Scored, score } from './scored.ts';
import type { LineUp, Shortlist } from './shortlist.ts';
import { type Sieved, sieve } from './sieve.ts';
import { surenessOf } from './sureness.ts';
import { whatIf } from './what-if.ts';

/** Pairs kept ready for "show more". Our choice. */
const MORE = 6;

/**
 * The few pairs to try, from the shop's own stock: what meets every must and is on hand in the size, in order of
 * desirability, three of them with a part each. One line-up, or one for each part of a split profile; none unless the
 * outcome is a shortlist. With `reprofile` (the profile of a changed visit) it also looks for the one answer whose
 * change would bring another pair first, which takes up to 24 such profiles more.
 *
 * `seed` feeds the varied importances that tell a clear first pair from a close call, and nothing else. Work grows
 * with the number of shoes, and no faster but for sorting them.
 */
export function shortlistOf(
  profile: Profile,
  visit: Visit,
  knowledge: Knowledge,
  stock: Stock,
  seed: number,
  reprofile?: (changed: Visit) => Profile,
): Shortlist {
  const { outcome, cautions } = profile;
  if (outcome !== 'shortlist') return { outcome, lineUps: [], cautions };
  const { shoes } = stock;
  const boxes = boxesInSize(stock, profile.size);
  const lineUps = partsOf(profile).map((part) => lineUpOf(part, profile, knowledge, shoes, boxes, seed));
  const first = lineUps[0]?.entries[0]?.shoe.id;
  // A split profile has two first pairs, and a change of one answer moves both: nothing short can be said of it.
  if (reprofile === undefined || first === undefined || lineUps.length > 1) return { outcome, lineUps, cautions };

  const found = whatIf(first, profile, visit, knowledge, (changed) => {
    const other = reprofile(changed);
    const [part, second] = partsOf(other);
    if (other.outcome !== 'shortlist' || part === undefined || second !== undefined) return undefined;
    const sameSize = JSON.stringify(other.size) === JSON.stringify(profile.size);
    return firstOf(part, shoes, sameSize ? boxes : boxesInSize(stock, other.size))?.shoe.id;
  });
  return { outcome, lineUps: lineUps.map((lineUp) => ({ ...lineUp, ...(found && { whatIf: found }) })), cautions };
}

function lineUpOf(
  part: ProfilePart,
  profile: Profile,
  knowledge: Knowledge,
  shoes: readonly Shoe[],
  boxes: BoxesInSize,
  seed: number,
): LineUp {
  const { inOrder, sieved } = inOrderOf(part, shoes, boxes);
  const setting = settingOf(part, profile, knowledge);
  const placed = pickLineUp(inOrder, part.needs, asksFirmerInner(part, profile), part.preferences);
  const boxesOf = ({ id }: Shoe) => boxes.get(id) as readonly BoxFit[];
  const entries = placed.map((each, i) => entryOf(each.scored, i + 1, each.part, boxesOf(each.scored.shoe), setting));
  const without = moreWithout(
    sieved,
    placed.map(({ scored }) => scored.shoe),
    part.preferences ?? [],
  );
  const taken = new Set(placed.map(({ scored }) => scored));
  const more = inOrder
    .slice(0, MORE + placed.length)
    .filter((scored) => !taken.has(scored))
    .slice(0, MORE)
    .map((scored, i) => entryOf(scored, placed.length + i + 1, '', boxesOf(scored.shoe), setting));
  return {
    for: part.for,
    entries,
    more,
    removed: sieved.removed,
    ifDropped: sieved.ifDropped,
    ...(without && { moreWithout: without }),
    sureness: surenessOf(inOrder, [...part.needs, ...(part.preferences ?? [])], seed),
  };
}

/** The shoes that pass every must, the most desirable first. */
function inOrderOf(
  { needs, musts, preferences }: ProfilePart,
  shoes: readonly Shoe[],
  boxes: BoxesInSize,
): { readonly inOrder: readonly Scored[]; readonly sieved: Sieved } {
  const sieved = sieve(shoes, musts, ({ id }) => boxes.has(id));
  return { inOrder: sieved.left.map((shoe) => score(shoe, needs, preferences)).sort(byOrder), sieved };
}

/** Only the first of them, without putting the rest in order. */
function firstOf(
  { needs, musts, preferences }: ProfilePart,
  shoes: readonly Shoe[],
  boxes: BoxesInSize,
): Scored | undefined {
  let first: Scored | undefined;
  for (const shoe of shoes) {
    if (!boxes.has(shoe.id) || musts.some((must) => meets(shoe, must) !== 'yes')) continue;
    const scored = score(shoe, needs, preferences);
    if (first === undefined || byOrder(scored, first) < 0) first = scored;
  }
  return first;
}

/** Roll seen going in, where the profile lets it count: then the third pair is firmer on the inner side, to compare. */
function asksFirmerInner({ needs }: ProfilePart, { facts }: Profile): boolean {
  const support = needs.find(({ attribute }) => attribute === 'medial-support');
  return facts['roll-in'] === true && (support?.reasons.some(({ from }) => from === 'observation') ?? false);
}
