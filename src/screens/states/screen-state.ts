import type { Override } from '../../visit/visit.ts';

/** One thing a person does: a tap on what a selector finds, something typed into it, or a file handed to it. */
export type Step =
  | string
  | { readonly into: string; readonly typed: string }
  | { readonly into: string; readonly file: string; readonly holds: string };

/** A state a screen can be in: a story gives the answers, `steps` are what a person does to get there. */
export interface ScreenState {
  readonly id: string;
  /** A story of `flows/fitting/stories`, whose answers stand. */
  readonly story: string;
  /** A question, `welcome`, `review` or `finished`. */
  readonly at: string;
  readonly steps?: readonly Step[];
  /** What stands on the screen once it is there. */
  readonly shows?: string;
  /** A draft is in storage, or one that cannot be read. */
  readonly draft?: 'kept' | 'foreign';
  /** Storage is refused. */
  readonly refused?: true;
  /** Nobody is there. */
  readonly idle?: true;
  /** Answers laid over the story's. */
  readonly answers?: Readonly<Record<string, unknown>>;
  /** What the shop's tablet holds already. */
  readonly kept?: Kept;
}

export interface Kept {
  /** A PIN is set, or one that was just tried wrong too often. */
  readonly pin?: 'set' | 'slowed';
  readonly tickets?: readonly KeptTicket[];
  /** Visits were closed before, and lacked this and that. */
  readonly lacks?: true;
}

/** A visit that waits at the bench. */
export interface KeptTicket {
  readonly word: string;
  readonly number: number;
  readonly story: string;
  /** How long it has waited, minutes. */
  readonly waited: number;
  /** What is left of the health answers where the customer did not hand them over. */
  readonly hold?: 'none' | 'skipped';
  readonly overrides?: readonly Override[];
}
