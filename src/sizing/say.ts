import type { Finding } from '../units/result.ts';
import type { Words } from '../words/words.ts';

/**
 * The words for one of a size's findings: `size.say.<code>` where it is said to the customer, else `finding.<code>`.
 *
 * @example sayFinding({ code: 'right-longer', severity: 'note', data: { mm: 6 } }, words)
 * // 'Your right foot is 6 mm longer. We fit the longer one.'
 */
export function sayFinding(finding: Finding, words: Words): string {
  const own = `size.say.${finding.code}`;
  const data = {
    ...(finding.value === undefined ? {} : { value: finding.value }),
    at: finding.at ?? '',
    ...finding.data,
  };
  return words.say(words.has(own) ? own : `finding.${finding.code}`, data);
}
