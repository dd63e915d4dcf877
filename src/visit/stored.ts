import type { Flow } from '../flow/format.ts';
import type { Tables } from '../flow/options.ts';
import type { Finding, Reading } from '../units/result.ts';
import { findingOf } from './fault.ts';
import { visitReader } from './read-visit.ts';
import { isGroup } from './reader.ts';
import type { Visit } from './visit.ts';

/** Raised when what is stored changes shape. */
export const STORED_FORMAT = 1;

/** A visit as the device keeps it: plain JSON with the number of its format. */
export interface StoredVisit {
  readonly format: number;
  readonly visit: Visit;
}

export const toStored = (visit: Visit): StoredVisit => ({ format: STORED_FORMAT, visit });

/**
 * Reads a stored visit back, perhaps into a changed flow. What still fits is kept; what no longer does is left out and
 * said in a note. Nothing comes back for another format, another flow, or something that is no visit.
 */
export function readStored(stored: unknown, flow: Flow, tables: Tables): Reading<Visit> {
  if (!isGroup(stored)) return { findings: [{ code: 'stored-not-a-visit', severity: 'error' }] };
  if (stored['format'] !== STORED_FORMAT) {
    const data = { wanted: STORED_FORMAT };
    return { findings: [findingOf([], { code: 'stored-other-format', value: stored['format'], data })] };
  }
  const findings: Finding[] = [];
  const visit = visitReader(flow, tables)(stored['visit'], [], (path, fault) => findings.push(findingOf(path, fault)));
  if (visit === undefined) return { findings };
  return { value: visit, findings: findings.map((finding) => ({ ...finding, severity: 'note' })) };
}
