import type { Answers } from '../flow/answers.ts';
import type { Place } from '../flow/format.ts';

/** Where one interview stands. Everything else about it is derived from the flow and these three. */
export interface InterviewState {
  /** As given, also those off the route; what counts is `answersInPlay`. */
  readonly answers: Answers;
  readonly at: Place;
  /** A change from review is under way: only questions that still want an answer come before review again. */
  readonly changing: boolean;
}

export const FRESH: InterviewState = { answers: {}, at: 'welcome', changing: false };
