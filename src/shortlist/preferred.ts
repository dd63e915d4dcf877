import { SUBSTITUTE_DESIRABILITY } from '../attributes/table.ts';
import { USES } from '../attributes/uses.ts';
import type { Preference } from '../profile/profile.ts';
import type { Shoe } from '../stock/shoe.ts';
import { type Met, meets } from './musts.ts';

/**
 * What a shoe is worth to an activity by what it is sold for: the best use, another that goes with it, none of them.
 * Never nothing, since only a must shuts a shoe out. Our figures; that a running shoe beats a walking shoe for a
 * runner, all else alike, is common practice.
 */
const SOLD_FOR = { best: 1, other: 0.85, none: 0.25 } as const;

/** What a shoe without a wished mark is worth, where that was recorded. Our figure. */
const WITHOUT = 0.3;

/** How well a shoe meets one preference, above 0 to 1. What was not recorded takes the table's substitute. */
export function preferred(shoe: Shoe, preference: Preference): number {
  if (preference.kind === 'use') {
    if (shoe.use.length === 0) return SUBSTITUTE_DESIRABILITY;
    return preference.parts.reduce((sum, { uses, share }) => sum + share * soldFor(shoe, uses), 0);
  }
  const met = wishMet(shoe, preference);
  return met === 'yes' ? 1 : met === 'no' ? WITHOUT : SUBSTITUTE_DESIRABILITY;
}

/** Sold for something else besides, it is made for neither alone. */
function soldFor({ use }: Shoe, uses: readonly string[]): number {
  if (!use.some((each) => uses.includes(each))) return SOLD_FOR.none;
  return use.includes(uses[0] as string) && use.every((each) => uses.includes(each)) ? SOLD_FOR.best : SOLD_FOR.other;
}

/** Any one of the wished things will do; not known only while one of them might still be there. */
export function wishMet(shoe: Shoe, { anyOf }: Extract<Preference, { kind: 'wish' }>): Met {
  const found = anyOf.map((wished) => meets(shoe, { ...wished, reasons: [] }));
  return found.includes('yes') ? 'yes' : found.includes('unrecorded') ? 'unrecorded' : 'no';
}

/** Whether a shoe is sold for something that is done in it. Yes where nothing in particular is, or nobody recorded it. */
export function isMadeFor(shoe: Shoe, preferences: readonly Preference[]): boolean {
  return preferences.every(
    (each) =>
      each.kind !== 'use' ||
      shoe.use.length === 0 ||
      each.parts.some(({ uses }) => shoe.use.some((use) => uses.includes(use))),
  );
}

/** The word for what a shoe is made for, of those that have words; `other` for a shop's own. */
export function soldAs({ use }: Shoe): string {
  return USES.find((known) => use.includes(known)) ?? 'other';
}
