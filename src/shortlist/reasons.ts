import type { Need, Preference } from '../profile/profile.ts';
import { mostImportant, tracedTo } from './meets.ts';
import { wishMet } from './preferred.ts';
import type { Scored } from './scored.ts';
import type { Meets } from './shortlist.ts';

/** What a pair meets: the needs whose ideal range its recorded figure lies in, the most important first; and the wishes it fulfils. */
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
  return mostImportant([
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
