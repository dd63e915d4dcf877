import type { Hold } from '../visit/visit.ts';

/** Levels that stop the line until somebody else has looked. */
export type Stop = Extract<Hold, 'before-choosing' | 'today' | 'now'>;
const STOPS: readonly Stop[] = ['before-choosing', 'today', 'now'];

export const isStop = (word: unknown): word is Stop => STOPS.some((stop) => stop === word);
