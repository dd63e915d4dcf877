import type { Answer } from '../flow/answers.ts';
import type { Place } from '../flow/format.ts';

/** What can happen to an interview. Events name the question they are about, so that a double tap cannot skip one. */
export type InterviewEvent =
  | { readonly type: 'start' }
  | { readonly type: 'answer'; readonly question: string; readonly value: Answer }
  /** From a question, or from `review`. */
  | { readonly type: 'back'; readonly question: string }
  /** From review: answer this one again, then return there. */
  | { readonly type: 'change'; readonly question: string }
  /** To any place that is open now: `welcome`, a question in play, or `review` once nothing is left open. */
  | { readonly type: 'goTo'; readonly place: Place }
  /** From review. With a question still open it leads there instead. */
  | { readonly type: 'finish' };
