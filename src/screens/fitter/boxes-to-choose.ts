import type { Entry } from '../../shortlist/shortlist.ts';
import type { Box } from '../../stock/shoe.ts';
import type { TryOn } from '../../visit/visit.ts';

/** So many boxes are to fetch of each pair: the one that fits, and the next where in doubt. */
const FETCHED = 2;

/** The boxes of a pair that the customer may take: those that were to fetch, and whatever else was on their feet. */
export function boxesToChoose(
  { shoe, boxes }: Pick<Entry, 'shoe' | 'boxes'>,
  tryOns: readonly TryOn[],
  stocked: readonly Box[],
): readonly Box[] {
  const fetched = boxes.slice(0, FETCHED).map((fit) => fit.box);
  const tried = new Set(tryOns.filter((each) => each.shoe === shoe.id).map(({ box }) => box));
  const known = [...boxes.map((fit) => fit.box), ...stocked.filter((box) => box.shoe === shoe.id)];
  const others = known.filter(({ id }) => tried.has(id) && fetched.every((box) => box.id !== id));
  return [...fetched, ...new Map(others.map((box) => [box.id, box])).values()];
}
