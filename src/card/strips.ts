import type { AttributeKey } from '../attributes/attributes.ts';
import { attribute } from '../attributes/table.ts';
import type { Facts, Need } from '../profile/profile.ts';
import type { Shoe } from '../stock/shoe.ts';
import type { Visit } from '../visit/visit.ts';
import type { Strip } from './card.ts';

/**
 * One tape measure for each need, most important first: the wanted range as a band, each pair as its letter, today's
 * shoe as a ring. No average and no score: a reader compares letters with a band.
 *
 * A figure nobody recorded puts its letter under `missing`, never at a guessed place.
 */
export function stripsOf(
  needs: readonly Need[],
  pairs: readonly { readonly letter: string; readonly shoe: Shoe }[],
  facts: Facts,
  withFigures: boolean,
): readonly Strip[] {
  return needs.map((need) => {
    const known = pairs.flatMap(({ letter, shoe }) => {
      const value = shoe.numbers[need.attribute];
      return value === undefined ? [] : [{ letter, at: place(need.attribute, value) }];
    });
    const today = facts[`today-${need.attribute}`];
    return {
      attribute: need.attribute,
      band: [place(need.attribute, need.ideal[0]), place(need.attribute, need.ideal[1])] as const,
      pairs: known,
      ...(typeof today === 'number' ? { today: place(need.attribute, today) } : {}),
      missing: pairs.filter((pair) => !known.some((k) => k.letter === pair.letter)).map((pair) => pair.letter),
      ...(withFigures ? { wanted: need.ideal } : {}),
    };
  });
}

/** Whether anything of today's shoe was measured; all else of it is what such shoes usually are. */
export const todayMeasured = ({ observation }: Pick<Visit, 'observation'>): boolean =>
  Object.keys(observation.oldPair?.measured ?? {}).length > 0;

/**
 * Where a value stands on its tape, 0 at the low end to 1 at the high end; beyond the ends it stays at the end.
 *
 * @example
 * place('cushion', 3) // 0.5: the middle of five steps
 */
export function place(key: AttributeKey, value: number): number {
  const [from, to] = attribute(key).range;
  return Math.min(1, Math.max(0, (value - from) / (to - from)));
}
