import type { Words } from '../../words/words.ts';

/** A fitter's reason as kept: a one-tap id in this language's words, or what was typed. */
export function keptReason(reason: string, words: Words): string {
  const key = `bench.reason.${reason}`;
  return /^[a-z-]+$/.test(reason) && words.has(key) ? words.say(key) : reason;
}
