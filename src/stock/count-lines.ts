import type { Finding } from '../units/result.ts';

/** How many lines of a stock list were refused: those with an error. Findings about the file as a whole have no line. */
export function refusedLines(findings: readonly Finding[]): number {
  return new Set(findings.filter((one) => one.severity === 'error' && one.line !== undefined).map((one) => one.line))
    .size;
}
