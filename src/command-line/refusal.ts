import type { Finding } from '../units/result.ts';

/** Stops a command: exit 1 with what was found, or exit 2 for words that are no command. Nothing has been written. */
export class Refusal extends Error {
  readonly findings: readonly Finding[];
  readonly exit: 1 | 2;

  constructor(found: readonly Finding[] | string, value?: string, exit: 1 | 2 = 1) {
    super('refused');
    this.exit = exit;
    this.findings =
      typeof found === 'string'
        ? [{ code: found, severity: 'error', ...(value === undefined ? {} : { value }) }]
        : found;
  }
}

export const usage = (code: string, value = '', data: NonNullable<Finding['data']> = {}): Refusal =>
  new Refusal([{ code, severity: 'error', value, data }], undefined, 2);
