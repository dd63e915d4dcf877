/**
 * Answers: a map by question id. One question, one answer, whatever its kind.
 *
 * `not-sure` and `no-preference` are answers. A question that is not in the map is unanswered.
 */
export type Answers = Readonly<Record<string, Answer>>;

export type Answer =
  /** one-of: the option's id. yes-no: `yes`, `no`, `not-sure`. number: `not-sure`, where offered. body-map: one of `BODY_WORDS`. */
  | string
  /** some-of, signs: option ids in the question's order; `['none']` is "none of these". */
  | readonly string[]
  | Quantity
  /** shares: option → how often; an option that stands alone is `mostly`. against-today: property → choice, untouched ones left out. */
  | Readonly<Record<string, string>>
  | BodyMap;

/** number: a value in the unit it was given in, e.g. `{ value: 42.5, unit: 'eu' }` or `{ value: 265, unit: 'mm' }`. */
export interface Quantity {
  readonly value: number;
  readonly unit: string;
}

/** body-map: region → since when, and whether a clinician has seen it. `{}` is "nowhere". */
export type BodyMap = Readonly<Record<string, BodyMark>>;
export interface BodyMark {
  readonly when: BodyWhen;
  readonly seen: boolean;
}
export const BODY_WHEN = ['now', 'this-month', 'this-year', 'longer-ago'] as const;
export type BodyWhen = (typeof BODY_WHEN)[number];

/** What a body map may be answered with in one tap, instead of marks. */
export const BODY_WORDS = ['skipped', 'rather-not-say'] as const;

export const YES_NO = ['yes', 'no', 'not-sure'] as const;

/** How much of the time, for `shares`. The stated shares they stand for are in `src/profile`. */
export const SHARES = ['mostly', 'some', 'now-and-then'] as const;
export type Share = (typeof SHARES)[number];
