import type { Condition } from './condition.ts';

/** The questions, routes and bounds of one interview, as data. Read from `flows/<flow>/flow.json`. */
export interface Flow {
  readonly id: string;
  /** Raised whenever a question or option is added, removed or changes meaning. */
  readonly version: number;
  readonly languages: readonly string[];
  readonly bounds: FlowBounds;
  readonly sections: readonly Section[];
}

/** The most questions a visitor may be asked; `check` holds the flow to them. */
export interface FlowBounds {
  /** No route is longer than this. */
  readonly longest: number;
  /** Ways through that must stay short. */
  readonly shortWays: readonly { readonly id: string; readonly when: Condition; readonly screens: number }[];
  /** What a typical visitor meets: a named set of answers and its bound. */
  readonly typical: { readonly story: string; readonly screens: number };
}

/** A body map may be passed over in one tap: its answer is then `skipped`. */
export interface Section {
  readonly id: string;
  readonly questions: readonly Question[];
}

export const QUESTION_KINDS = [
  'one-of',
  'some-of',
  'number',
  'yes-no',
  'shares',
  'against-today',
  'body-map',
  'signs',
] as const;
export type QuestionKind = (typeof QUESTION_KINDS)[number];

interface QuestionBase {
  readonly id: string;
  readonly kind: QuestionKind;
  /** A health answer: gone when the visit ends, on no card without consent. */
  readonly health?: true;
  /** Asked only when this holds of the answers to earlier questions. Absent: always asked. */
  readonly askWhen?: Condition;
  /** Words `question.<id>.note` stand under the question when this holds of the answers to earlier ones. */
  readonly noteWhen?: Condition;
  /** Who reads the answer where no condition, rule or table does: a step of the line, or the fitter on their copy. */
  readonly readBy?: Reader;
}

export const READERS = ['profile', 'sizing', 'shortlist', 'card', 'fitter'] as const;
export type Reader = (typeof READERS)[number];

/** Choices: spelled out, or all rows of a table (`activities`, `floors`, `shoe-kinds`) with rows' `group` as the first tap. */
export type Options = readonly Option[] | TableOptions;
export interface TableOptions {
  readonly table: TableName;
  /** Rows offered only when something holds of earlier answers: no child is asked about shift work. */
  readonly rowsWhen?: readonly { readonly rows: readonly string[]; readonly when: Condition }[];
}
export const TABLE_NAMES = ['activities', 'floors', 'shoe-kinds'] as const;
export type TableName = (typeof TABLE_NAMES)[number];
export interface Option {
  readonly id: string;
  /** Choosing this clears the others, and the other way round (`none`, `not-sure`, `no-preference`). */
  readonly alone?: true;
  /** Ends the interview: whoever needs help today is shown where to get it, not a review of their answers. */
  readonly ends?: true;
  /** A sum of money that the option's words name as a bare figure; shown in the shop's currency. */
  readonly sum?: number;
  /** Offered only when this holds of earlier answers. */
  readonly showWhen?: Condition;
  /** As on a question, for one option alone. */
  readonly readBy?: Reader;
}

/** Buttons that answer at once. `extra` adds spelled-out options after a table's rows (`none`, `not-sure`, `something-else`). */
export interface OneOf extends QuestionBase {
  readonly kind: 'one-of';
  readonly options: Options;
  readonly extra?: readonly Option[];
}
export interface YesNo extends QuestionBase {
  readonly kind: 'yes-no';
}
export interface SomeOf extends QuestionBase {
  readonly kind: 'some-of';
  readonly options: Options;
  readonly extra?: readonly Option[];
  readonly most?: number;
}
/** A typed number with a choice of units; `from` and `to` guard each unit's range. */
export interface NumberQuestion extends QuestionBase {
  readonly kind: 'number';
  readonly units: readonly { readonly id: string; readonly from: number; readonly to: number }[];
  /** Offers "not sure" as an answer. */
  readonly notSure?: true;
}
export interface SharesQuestion extends QuestionBase {
  readonly kind: 'shares';
  readonly options: Options;
  readonly extra?: readonly Option[];
}
/** Several properties on one screen, each against today's shoe; each property lists its own choices in order. */
export interface AgainstToday extends QuestionBase {
  readonly kind: 'against-today';
  readonly properties: readonly { readonly id: string; readonly choices: readonly string[] }[];
}
export interface BodyMapQuestion extends QuestionBase {
  readonly kind: 'body-map';
  readonly regions: readonly { readonly id: string; readonly view: 'front' | 'back' | 'foot' }[];
}
export interface SignsQuestion extends QuestionBase {
  readonly kind: 'signs';
  readonly options: readonly Option[];
}
export type Question =
  | OneOf
  | YesNo
  | SomeOf
  | NumberQuestion
  | SharesQuestion
  | AgainstToday
  | BodyMapQuestion
  | SignsQuestion;

/** Where an interview stands: a question's id, or one of the places around them. */
export type Place = 'welcome' | 'review' | 'finished' | (string & {});
