import type { Finding } from '../units/result.ts';

/** How many lines of a stock list were refused: those with an error of their own, not the line of column names. */
export function refusedLines(findings: readonly Finding[]): number {
  const own = findings.filter(({ code, severity }) => severity === 'error' && !code.startsWith('stock-column-'));
  return new Set(own.flatMap(({ line }) => (line === undefined ? [] : [line]))).size;
}
