import type { Answer } from '../../flow/answers.ts';

const NOTHING: readonly unknown[] = ['none', 'no-preference', 'not-sure', 'skipped'];

/**
 * Whether an answer tells nothing to go by: "none of these", "I don't mind", "not sure". Not wanting to say does tell.
 *
 * @example
 * saysNothing(['none']) // true
 * saysNothing({ cushion: 'softer', weight: 'no-preference' }) // false
 */
export function saysNothing(answer: Answer): boolean {
  if (typeof answer === 'string') return NOTHING.includes(answer);
  if (Array.isArray(answer)) return answer.every((each) => NOTHING.includes(each));
  return Object.entries(answer).every(([key, value]) => NOTHING.includes(key) || NOTHING.includes(value));
}
