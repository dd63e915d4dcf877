import type { Finding } from '../../units/result.ts';
import type { JsonDocument, JsonPath } from './document.ts';

type Further = Partial<Pick<Finding, 'severity' | 'value' | 'data'>>;

/** A finding about one place in a file, with its line and the question, rule or row it stands in. */
export function findingAt(document: JsonDocument, place: JsonPath, code: string, further: Further = {}): Finding {
  const at = nameOf(document, place);
  return { code, severity: 'error', file: document.path, line: document.lineOf(place), ...(at && { at }), ...further };
}

const NAMES: Readonly<Record<string, string>> = {
  sections: 'section',
  questions: 'question',
  options: 'option',
  extra: 'option',
  properties: 'property',
  regions: 'region',
  units: 'unit',
  shortWays: 'short way',
  'activities.json': 'activity',
  'floors.json': 'floor',
  'shoe-kinds.json': 'shoe kind',
  'rules.json': 'rule',
  'cautions.json': 'caution',
  'advice.json': 'advice',
  'sources.json': 'source',
};

/** The way to a place in shop words: `section why, question reason, option worn-out`. */
function nameOf(document: JsonDocument, place: JsonPath): string {
  const names: string[] = [];
  let value = document.value;
  let list = fileName(document.path);
  for (const step of place) {
    value = (value as Readonly<Record<string | number, unknown>> | undefined)?.[step];
    if (typeof step === 'string') list = step;
    else if (NAMES[list]) names.push(`${NAMES[list]} ${idOf(value) ?? step + 1}`);
  }
  return names.join(', ');
}

const idOf = (value: unknown): string | undefined =>
  typeof value === 'object' && value !== null && 'id' in value && typeof value.id === 'string' ? value.id : undefined;

export const fileName = (path: string): string => path.slice(path.lastIndexOf('/') + 1);
