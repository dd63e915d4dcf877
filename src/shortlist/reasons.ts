import type { Need, Preference } from '../profile/profile.ts';
import { inOrder, tracedTo } from './meets.ts';
import { wishMet } from './preferred.ts';
import type { Scored } from './scored.ts';
import type { Meets } from './shortlist.ts';

/**
 * All that a pair meets, the most important first: needs whose ideal range its recorded figure lies in, and wishes it
 * fulfils. How many of them are said, and which are said of all pairs at once, is the card's to decide.
 */
export function reasonsFor(
  { shoe }: Scored,
  needs: readonly Need[],
  health: ReadonlySet<string>,
  preferences: readonly Preference[] = [],
): readonly Meets[] {
  const met = needs.filter(({ attribute, ideal }) => {
    const value = shoe.numbers[attribute];
    return value !== undefined && value >= ideal[0] && value <= ideal[1];
  });
  const wishes = preferences.filter((each) => each.kind === 'wish' && wishMet(shoe, each) === 'yes');
  return inOrder([
    ...met.map(({ attribute, importance, reasons }) => ({
      weight: importance,
      meets: { code: `${attribute}-meets`, attribute, ...tracedTo(reasons, health) },
    })),
    ...wishes.map(({ code, importance, reasons }) => ({
      weight: importance,
      meets: { code, ...tracedTo(reasons, health) },
    })),
  ]);
}
