import type { Finding } from '../units/result.ts';

/** An object of which nothing is known yet. */
export type Loose = Readonly<Record<string, unknown>>;

const CHOICES = {
  posture: ['standing', 'seated', 'one-foot'],
  sock: ['worn-sock', 'thin-sock', 'barefoot'],
  time: ['morning', 'midday', 'late'],
  spill: ['none', 'inner', 'outer', 'both'],
  bulge: ['none', 'inner', 'outer'],
  heelLining: ['whole', 'worn', 'torn'],
  soleWear: ['even', 'outer-heel', 'inner-heel', 'forefoot', 'toe', 'worn-out'],
  during: ['own-movement', 'walk'],
} as const;
/** A bench note is a line or two; more is a paste gone wrong. */
const LONGEST_NOTE = 500;

/** The choice under a key, if it is one of those there are. */
export function choiceAt<K extends keyof typeof CHOICES>(
  value: Loose,
  key: K,
  path: string,
  findings: Finding[],
): (typeof CHOICES)[K][number] | undefined {
  if (value[key] === undefined) return undefined;
  const choices: readonly (typeof CHOICES)[K][number][] = CHOICES[key];
  const found = choices.find((choice) => choice === value[key]);
  if (found === undefined) findings.push(wrong(path + key, value[key], choices));
  return found;
}

/** A value that is none of the choices. */
export function wrong(at: string, value: unknown, choices: readonly string[]): Finding {
  return {
    code: 'observation-not-a-choice',
    severity: 'error',
    at,
    value: shown(value),
    data: { choices: choices.join(', ') },
  };
}

/** Text of bearable length. */
export function textAt(value: unknown, at: string, findings: Finding[]): string | undefined {
  if (typeof value === 'string' && value.length <= LONGEST_NOTE) return value;
  findings.push({
    code: 'observation-not-text',
    severity: 'error',
    at,
    value: shown(value),
    data: { most: LONGEST_NOTE },
  });
  return undefined;
}

/** Yes or no, if given. */
export function booleanAt(value: unknown, at: string, findings: Finding[]): boolean | undefined {
  if (value === undefined || typeof value === 'boolean') return value;
  findings.push(wrong(at, value, ['true', 'false']));
  return undefined;
}

/** An object, not a list and not nothing. */
export function objectAt(value: unknown, at: string, findings: Finding[]): Loose | undefined {
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) return value as Loose;
  findings.push({ code: 'observation-not-an-object', severity: 'error', at, value: shown(value) });
  return undefined;
}

/** Notes keys that mean nothing here, so that a misspelt one is seen. */
export function unknownKeys(value: Loose, known: readonly string[], path: string, findings: Finding[]): void {
  for (const key of Object.keys(value)) {
    if (!known.includes(key))
      findings.push({ code: 'observation-unknown', severity: 'note', at: (path + key).slice(0, 80) });
  }
}

/** Leaves an absent value out, rather than writing it as undefined. */
export function given<K extends string, V>(key: K, value: V | undefined): { readonly [P in K]?: V } {
  return value === undefined ? {} : ({ [key]: value } as { readonly [P in K]?: V });
}

/** A value as the finding shows it: short. */
export function shown(value: unknown): string {
  const text = typeof value === 'string' ? value : (JSON.stringify(value) ?? String(value));
  return text.length > 60 ? `${text.slice(0, 60)}…` : text;
}
