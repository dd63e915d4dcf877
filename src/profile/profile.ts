import type { AttributeKey } from '../attributes/attributes.ts';
import type { CautionLevel, Grade, MustRow, Outcome } from '../flow/knowledge.ts';
import type { SizeAdvice } from '../sizing/advice.ts';
import type { Hold } from '../visit/visit.ts';

/** The flat, typed map that rules read: answers in play, loads blended over activities and floors, observation. */
export type Facts = Readonly<Record<string, FactValue>>;
export type FactValue = string | number | boolean | readonly string[];

/** What a visit adds up to. */
export interface Profile {
  readonly outcome: Outcome;
  /** For `other-footwear`: which kind. */
  readonly otherFootwear?: string;
  /** The answers that made the outcome what it is; none for `shortlist`, or where only the hold travelled. */
  readonly outcomeReasons?: readonly Reason[];
  readonly hold: Hold;
  /** Sorted by importance, then attribute. */
  readonly needs: readonly Need[];
  readonly musts: readonly Must[];
  readonly preferences?: readonly Preference[];
  /** Two activities that pull too far apart, or an indoor-only pair also worn outside: a line-up for each. */
  readonly split?: readonly ProfilePart[];
  readonly cautions: readonly Caution[];
  readonly advice: readonly Advice[];
  /** Two strong needs that cannot both be met, said in words. */
  readonly conflicts: readonly Conflict[];
  readonly size: SizeAdvice;
  /** Questions (ids) not answered that would sharpen it, best first. */
  readonly unknown: readonly string[];
  readonly facts: Facts;
}

export interface ProfilePart {
  /** An activity's id, or `indoor` and `outdoor`. */
  readonly for: string;
  readonly needs: readonly Need[];
  readonly musts: readonly Must[];
  readonly preferences?: readonly Preference[];
}

/** One property: its ideal range and how much it matters. */
export interface Need {
  readonly attribute: AttributeKey;
  /** Flat top of the desirability, in the attribute's unit. */
  readonly ideal: readonly [number, number];
  /** Where desirability reaches its floor. */
  readonly limits: readonly [number, number];
  /** 0 to 1. */
  readonly importance: number;
  /** The side to which every wish about it points: a pair that goes further that way is no worse for it. */
  readonly toward?: 'less' | 'more';
  /** No pair is there to compare that has less of it than is wanted. */
  readonly neverLess?: true;
  /** Set where the customer said that this matters most: `matters-most:cushion`. */
  readonly raisedBy?: string;
  /** Weightiest first. */
  readonly reasons: readonly Reason[];
}

/** Why: the answer, observation or fact it came from, the rule, and who says so. */
export interface Reason {
  /** A question's id, `observation`, or a question's id and part: `body:heel`, `liking:cushion`. */
  readonly from: string;
  readonly rule: string;
  readonly source: string;
  readonly grade: Grade;
}

/** Something better had than not, with no size to it. It reorders within its importance and shuts nothing out. */
export type Preference = {
  readonly code: string;
  /** 0 to 1, on the scale of the needs. */
  readonly importance: number;
  readonly reasons: readonly Reason[];
} & (
  | {
      /** That a shoe is sold for what is done in it: uses by activity, the best first; shares add up to 1. */
      readonly kind: 'use';
      readonly parts: readonly { readonly uses: readonly string[]; readonly share: number }[];
    }
  | {
      /** Any one of these will do. */
      readonly kind: 'wish';
      readonly anyOf: readonly MustRow[];
      readonly safety?: true;
    }
);

/** A filter: what does not meet it is not shown. */
export interface Must {
  readonly attribute: string;
  readonly value: string | number | boolean;
  readonly reasons: readonly Reason[];
}

export interface Caution {
  readonly code: string;
  readonly level: CautionLevel;
  readonly health: boolean;
  readonly whom?: string;
  readonly source: string;
  readonly grade: Grade;
  /** A clinician has cleared it: said still, but it no longer stops the line. */
  readonly cleared?: true;
  readonly reasons: readonly Reason[];
}
export interface Advice {
  readonly code: string;
  readonly kind: string;
  readonly health: boolean;
  readonly reasons: readonly Reason[];
}
export interface Conflict {
  readonly attribute: AttributeKey;
  readonly between: readonly [Reason, Reason];
}
