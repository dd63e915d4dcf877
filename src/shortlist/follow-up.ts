import type { EaseIn } from './shortlist.ts';

/** Weeks where no plan for easing in says otherwise. Common practice. */
const USUAL = 2;

/**
 * Weeks after which a shop would like to see a pair it sold again: when the easing in is over.
 *
 * @example
 * followUpWeeks({ weeks: [{ week: 1, share: 0.5 }, { week: 3, share: 1 }] }) // 3
 * followUpWeeks(null) // 2
 */
export const followUpWeeks = (easeIn: Pick<EaseIn, 'weeks'> | null | undefined): number =>
  easeIn?.weeks.at(-1)?.week ?? USUAL;
