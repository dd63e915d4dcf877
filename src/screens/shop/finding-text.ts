import type { Finding } from '../../units/result.ts';
import type { Words } from '../../words/words.ts';

/** A finding in words. Line numbers are names of lines and are not grouped as sums are. */
export function findingText({ code, line, column, value, data }: Finding, words: Words): string {
  const firstLine = data?.['firstLine'];
  return words.say(`finding.${code}`, {
    ...data,
    ...(firstLine === undefined ? {} : { firstLine: String(firstLine) }),
    line: String(line ?? ''),
    column: column ?? '',
    value: value ?? '',
  });
}
