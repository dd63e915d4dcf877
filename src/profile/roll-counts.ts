import type { Facts } from './profile.ts';

/**
 * Roll seen while moving counts only together with a history of support that worked or hurt and a wish about the arch.
 *
 * Observers agree poorly by eye (kappa 0.19 among experienced clinicians: reliability study of walking video, 1996,
 * read), and rolling in under load is normal. So on its own it is hidden from every rule that
 * could change what is shown; a rule that only has something to say about it may still say it.
 */
export function rollCounts(facts: Facts): boolean {
  const past = facts['past-pairs'];
  const history = Array.isArray(past) && past.some((each) => each === 'support-helped' || each === 'support-hurt');
  const wish = facts['liking-arch'];
  return history && (wish === 'more' || wish === 'less');
}

const ROLL_FACTS = ['roll-in', 'roll-out', 'roll-seen'];

/** The facts as a rule that can change what is shown may read them. */
export function factsForRules(facts: Facts): Facts {
  if (rollCounts(facts)) return facts;
  return Object.fromEntries(Object.entries(facts).filter(([key]) => !ROLL_FACTS.includes(key)));
}
