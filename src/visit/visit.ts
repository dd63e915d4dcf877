import type { Answer, Answers } from '../flow/answers.ts';
import type { Observation } from '../observation/observation.ts';

/** One customer's visit: their answers, what the fitter changed, cleared and saw. */
export interface Visit {
  readonly flow: string;
  readonly flowVersion: number;
  readonly language: string;
  /** As the customer gave them; never rewritten. Answers off the route stay here but do not count. */
  readonly answers: Answers;
  readonly overrides: readonly Override[];
  readonly clearance?: Clearance;
  readonly observation: Observation;
  /** What is left of the health answers where they do not travel. Absent where the answers themselves are here. */
  readonly hold?: Hold;
  readonly tryOns: readonly TryOn[];
  readonly choice?: Choice;
  /** The customer said yes to "Print my health notes on my card". */
  readonly printHealth?: boolean;
}

/** Why, in one word, the line stops or is careful; the only thing about health that travels without consent. */
export const HOLDS = ['none', 'skipped', 'measure-first', 'before-choosing', 'today', 'now'] as const;
export type Hold = (typeof HOLDS)[number];

/** A fitter's change to one answer, by name and reason; the customer's own answer stays beside it. */
export interface Override {
  readonly question: string;
  readonly value: Answer;
  readonly by: string;
  readonly reason: string;
}

/** A clinician's word, confirmed by the fitter. Lifts `before-choosing` and nothing else. */
export interface Clearance {
  readonly by: string;
  readonly reason: string;
}

export interface TryOn {
  readonly shoe: string;
  readonly box: string;
  /** 1 is the customer's favourite. */
  readonly rank?: number;
  /** 0 to 100, where the customer likes numbers. Under 10 points apart is "about the same" (Mills 2010). */
  readonly comfort?: number;
  readonly size?: 'too-small' | 'right' | 'too-big';
  readonly notes: Readonly<Record<string, string>>;
  readonly rubs: readonly string[];
  /** What else the fitter noted, in a few words. */
  readonly note?: string;
}

export type Choice =
  | { readonly kind: 'pair'; readonly shoe: string; readonly box: string; readonly second?: string }
  | {
      readonly kind: 'none';
      readonly reason:
        | 'keeps-old'
        | 'other-shop'
        | 'not-in-size'
        | 'price'
        | 'thinks-it-over'
        | 'clinician-first'
        | 'other';
    };
