/** One choice as a screen shows it. */
export interface Offered {
  readonly id: string;
  readonly label: string;
  readonly group?: string;
  /** Choosing it clears the others. */
  readonly alone: boolean;
}

/** What a question's element tells the kiosk: the finished answer, once. */
export class AnsweredEvent extends CustomEvent<{ readonly value: unknown }> {
  constructor(value: unknown) {
    super('answered', { detail: { value }, bubbles: true });
  }
}
