import type { Change } from './bench-ticket.ts';

/** A part of the workspace asks for a change to its ticket. */
export class ChangeEvent extends CustomEvent<Change> {
  constructor(change: Change) {
    super('change-ticket', { detail: change, bubbles: true });
  }
}
