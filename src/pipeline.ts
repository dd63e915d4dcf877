import type { CardFacts, Copy } from './card/card.ts';
import { cardOf } from './card/card-of.ts';
import type { Shop } from './card/shop.ts';
import type { Knowledge } from './flow/knowledge.ts';
import { tablesOf } from './flow/options.ts';
import { factsOf } from './profile/facts.ts';
import { taskGate } from './profile/movement-gate.ts';
import type { Profile } from './profile/profile.ts';
import { profileOf } from './profile/profile-of.ts';
import type { Shortlist } from './shortlist/shortlist.ts';
import { shortlistOf } from './shortlist/shortlist-of.ts';
import type { Stock } from './stock/shoe.ts';
import { writeCardCode } from './visit/card-code.ts';
import type { Visit } from './visit/visit.ts';

/** What one visit comes to, each step kept so that a screen, a card or a test can look at any of them. */
export interface Line {
  readonly visit: Visit;
  readonly profile: Profile;
  readonly shortlist: Shortlist;
}

/**
 * The whole line: visit → facts → profile → shortlist.
 *
 * Pure: the same visit, knowledge, stock and seed give the same line, on every machine. `seed` feeds the varied
 * importances that tell a clear first pair from a close call, and nothing else. Looking for the one answer that would
 * change the first pair costs as much again several times over, so a bench that redraws at each change leaves it out.
 */
export function lineOf(visit: Visit, knowledge: Knowledge, stock: Stock, seed: number, withWhatIf = true): Line {
  const profileFor = (of: Visit): Profile => profileOf(factsOf(of, knowledge), of, knowledge);
  const profile = profileFor(visit);
  return {
    visit,
    profile,
    shortlist: shortlistOf(profile, visit, knowledge, stock, seed, withWhatIf ? profileFor : undefined),
  };
}

/** What a card needs besides the line: whose it is, when, and for whom. */
export interface CardRequest {
  readonly shop: Shop;
  /** ISO date of the visit. */
  readonly date: string;
  /** `maple 14`. */
  readonly ticket: string;
  readonly copy: Copy;
  /** Where the kiosk is served from; the printed code is then an address that opens there. */
  readonly origin?: string;
  /** Shoe ids in the order of their letters, where letters were given before: a pair keeps its own. */
  readonly letters?: readonly string[];
}

/** The last step: line → what the card says. `src/card` lays it out and draws it. */
export function cardOfLine(line: Line, knowledge: Knowledge, stock: Stock, request: CardRequest): CardFacts {
  const { origin, ...rest } = request;
  return cardOf(line, {
    ...rest,
    stock,
    knowledge,
    code: writeCardCode(line.visit, line.profile.hold, knowledge.flow, tablesOf(knowledge), origin),
    gate: taskGate,
  });
}
