import { setup } from 'xstate';

/** WCAG 2.2, success criterion 2.2.1: at least 20 seconds to extend a time limit with a simple action. */
export const SHORTEST_WARNING = 20_000;

/** Milliseconds: how long nobody touches the screen before the warning, and how long the warning stands. */
export interface IdleTimes {
  readonly quiet: number;
  readonly warning: number;
}

export type IdleEvent =
  /** Any touch or key, or "I am still here". */
  | { readonly type: 'stir' }
  /** "Start over" on the warning. */
  | { readonly type: 'wipe' };

/**
 * Watches for a customer who has walked away: active → warning → wiped.
 *
 * It knows nothing of the interview, so a stir during the warning leaves that exactly as it was. Whoever starts it
 * clears everything once it is done. A warning is never shorter than `SHORTEST_WARNING`, whatever was asked.
 */
export const idleMachine = setup({
  types: { context: {} as IdleTimes, events: {} as IdleEvent, input: {} as IdleTimes },
  delays: {
    quiet: ({ context }) => context.quiet,
    warning: ({ context }) => Math.max(SHORTEST_WARNING, context.warning),
  },
}).createMachine({
  id: 'idle',
  context: ({ input }) => input,
  initial: 'active',
  states: {
    active: { after: { quiet: 'warning' }, on: { stir: { target: 'active', reenter: true } } },
    warning: { after: { warning: 'wiped' }, on: { stir: 'active', wipe: 'wiped' } },
    wiped: { type: 'final' },
  },
});
