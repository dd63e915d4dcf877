import type { AttributeKey } from '../attributes/attributes.ts';
import type { Outcome } from '../flow/knowledge.ts';
import type { Caution, Must } from '../profile/profile.ts';
import type { BoxFit } from '../sizing/advice.ts';
import type { Shoe } from '../stock/shoe.ts';

export interface Shortlist {
  readonly outcome: Outcome;
  /** One, or one for each part of a split profile. Empty unless the outcome is `shortlist`. */
  readonly lineUps: readonly LineUp[];
  readonly cautions: readonly Caution[];
}

/** The few pairs to try. */
export interface LineUp {
  /** `all`, or a profile part's `for`. */
  readonly for: string;
  readonly entries: readonly Entry[];
  /** The next best, for "show more", without parts. */
  readonly more: readonly Entry[];
  /**
   * How many shoes of the whole stock do not meet each must, whatever the other musts say; musts that shut nobody out
   * are left out. `unrecorded` of them may meet it, but nobody wrote it down.
   */
  readonly removed: readonly Removed[];
  /** Only when nothing is left: dropping this one must would give so many pairs. Most pairs first. */
  readonly ifDropped: readonly { readonly must: string; readonly value: Must['value']; readonly pairs: number }[];
  /** Only where pairs are few, or not all made for what is done in them: what dropping one must would give. */
  readonly moreWithout?: MoreWithout;
  /** `closest` on paper, or a close call where the feet decide. */
  readonly sureness: 'closest-on-paper' | 'feet-decide' | 'none';
  /** The one answer whose change would change the first pair. */
  readonly whatIf?: WhatIf;
}

export interface Removed {
  /** The must's attribute, or `size` for "no box in this size on hand". */
  readonly must: string;
  /** What was asked of it: `slip` of the safety marks, 90 of the price. */
  readonly value: Must['value'];
  readonly count: number;
  readonly unrecorded: number;
}

/** Without this one must there would be so many pairs; with `madeFor` only those count that are sold for the activity. */
export interface MoreWithout {
  readonly must: string;
  readonly value: Must['value'];
  readonly pairs: number;
  readonly madeFor?: true;
}

/** Had this question been answered so, that shoe would come first. */
export interface WhatIf {
  readonly question: string;
  /** The property of an against-today question. */
  readonly property?: string;
  /** The choice or option: given instead, or taken out when `without`. */
  readonly option: string;
  readonly without?: true;
  /** Id of the shoe. */
  readonly shoe: string;
}

export interface Entry {
  readonly shoe: Shoe;
  /** 1 is first. Printed as a letter: A, B, C. */
  readonly place: number;
  readonly part: Part;
  /** First to fetch, then the second where in doubt. */
  readonly boxes: readonly BoxFit[];
  readonly lastPair: boolean;
  readonly reasons: readonly Meets[];
  readonly misgivings: readonly Meets[];
  readonly easeIn: EaseIn | null;
  /** Needed but not recorded for this shoe. */
  readonly unknown: readonly AttributeKey[];
  /** Overall desirability, 0 to 1. It only orders; it is never shown. */
  readonly desirability: number;
}

/** What a pair is there for: `closest`, `also-close`, or a contrast such as `softer`, `lower`, `lighter`, `firmer-inner`, `cheaper`. */
export type Part = string;

/** One reason or misgiving, in code. Words: `reason.<code>` or `misgiving.<code>`. */
export interface Meets {
  /** `<attribute>-meets`, `<attribute>-more`, `<attribute>-less`, or a named one such as `tall-and-soft`. */
  readonly code: string;
  readonly attribute?: AttributeKey;
  /** The answer or observation it is traced to; `stock` for what the shelf alone says (last pair, runs small). */
  readonly from: string;
  /** Rests on a health answer alone: on the customer's card only with their consent. `said` in meets.ts sees to it. */
  readonly health?: true;
}

export const EASE_IN_TRIGGERS = ['lower-drop', 'thinner-bendier', 'tall-rocker', 'plate'] as const;
export type EaseInTrigger = (typeof EASE_IN_TRIGGERS)[number];

/** How to change over from today's shoe. Words: `easeIn.<trigger>`. */
export interface EaseIn {
  readonly triggers: readonly EaseInTrigger[];
  /** The customer's own unit. */
  readonly unit: string;
  /** Week by week: share of the usual load in the new pair, 0 to 1. */
  readonly weeks: readonly { readonly week: number; readonly share: number }[];
  readonly source: string;
  /** Points up on the published Minimalist Index, where it applies. For the fitter only. */
  readonly minimalistRise?: number;
}
