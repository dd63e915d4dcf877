import type { Finding } from '../units/result.ts';

/** What a command came to: text for its standard output, and what it found on the way. */
export interface Said {
  readonly text: string;
  readonly findings: readonly Finding[];
}

export const json = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;
