import type { Finding } from '../units/result.ts';
import type { Words } from '../words/words.ts';

/**
 * One line a finding: where, then what, then what to do. A finding whose words are missing still says its code and data,
 * so that nothing found is lost.
 *
 * @example sayFinding({ code: 'file-missing', severity: 'error', value: 'x.csv' }, words) // 'There is no file x.csv. …'
 */
export function sayFinding(finding: Finding, words: Pick<Words, 'has' | 'say'>): string {
  const where = [
    finding.file ? `${finding.file}${finding.line === undefined ? '' : `:${finding.line}`}` : lineOnly(finding),
    finding.column ? `column ${finding.column}` : '',
    finding.at ?? '',
  ].filter((part) => part !== '');
  const key = `finding.${finding.code}`;
  const data = { ...finding.data, value: finding.value ?? '', line: finding.line ?? '', column: finding.column ?? '' };
  const what = words.has(key) ? words.say(key, data) : `${finding.code} ${JSON.stringify(data)}`;
  return `${finding.severity === 'note' ? 'note: ' : ''}${where.length > 0 ? `${where.join(', ')}: ` : ''}${what}`;
}

const lineOnly = ({ line }: Finding): string => (line === undefined ? '' : `line ${line}`);
