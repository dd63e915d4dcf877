import type { Words } from '../../words/words.ts';

/** Reasons in one tap; their words are `bench.reason.<id>`. Any other is typed. */
export const ONE_TAP_REASONS = ['asked-again', 'seen', 'measured', 'tried-on', 'mistapped'] as const;
/** The reason that needs no tap: nobody had answered before. */
export const ASKED_NOW = 'asked-now';

/** A reason as kept: a one-tap id in this language's words, or what was typed. */
export function reasonText(reason: string, words: Words): string {
  const key = `bench.reason.${reason}`;
  return /^[a-z-]+$/.test(reason) && words.has(key) ? words.say(key) : reason;
}
