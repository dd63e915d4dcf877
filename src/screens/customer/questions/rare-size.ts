import type { Quantity } from '../../../flow/answers.ts';
import { rareAtAge } from '../../../sizing/rare-at-age.ts';
import type { TypedFinding, UnitRange } from './read-typed.ts';

/**
 * Asks again about a size that is rare at the age told, and offers the same number in the first other unit in which it is
 * not: `20.5` is more likely a child's foot in centimetres than its EU size.
 *
 * @returns nothing where the size is a likely one, or no age was told
 * @example rareSize({ value: 20.5, unit: 'eu' }, '6-to-10', units) // rare-at-age, meant { value: 20.5, unit: 'cm' }
 */
export function rareSize(
  given: Quantity,
  ageBand: string | undefined,
  units: readonly UnitRange[],
): TypedFinding | undefined {
  if (!rareAtAge(given, ageBand)) return undefined;
  const other = units.find(
    ({ id, from, to }) =>
      given.value >= from && given.value <= to && !rareAtAge({ value: given.value, unit: id }, ageBand),
  );
  return {
    code: 'rare-at-age',
    data: {},
    keep: given,
    ...(other && { meant: { value: given.value, unit: other.id } }),
  };
}
