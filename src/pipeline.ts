import type { Knowledge } from './flow/knowledge.ts';
import { factsOf } from './profile/facts.ts';
import type { Profile } from './profile/profile.ts';
import { profileOf } from './profile/profile-of.ts';
import type { Shortlist } from './shortlist/shortlist.ts';
import { shortlistOf } from './shortlist/shortlist-of.ts';
import type { Stock } from './stock/shoe.ts';
import type { Visit } from './visit/visit.ts';

/** What one visit comes to, each step kept so that a screen, a card or a test can look at any of them. */
export interface Line {
  readonly visit: Visit;
  readonly profile: Profile;
  readonly shortlist: Shortlist;
}

/**
 * The whole line: visit → facts → profile → shortlist. The card is drawn from the result by `src/card`.
 *
 * Pure: the same visit, knowledge, stock and seed give the same line, on every machine. `seed` feeds the varied
 * importances that tell a clear first pair from a close call, and nothing else.
 */
export function lineOf(visit: Visit, knowledge: Knowledge, stock: Stock, seed: number): Line {
  const profileFor = (of: Visit): Profile => profileOf(factsOf(of, knowledge), of, knowledge);
  const profile = profileFor(visit);
  return { visit, profile, shortlist: shortlistOf(profile, visit, knowledge, stock, seed, profileFor) };
}
