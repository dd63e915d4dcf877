import type { z } from 'zod';
import type { Finding } from '../../units/result.ts';
import type { JsonDocument, JsonPath } from './document.ts';
import { findingAt } from './finding-at.ts';

/** What a schema refused, as findings. Faults that fitters make often have a code, and so words, of their own. */
export function schemaFindings(document: JsonDocument, top: JsonPath, error: z.ZodError): readonly Finding[] {
  return error.issues.map((issue) => {
    const place = [...top, ...(issue.path as JsonPath)];
    const value = valueAt(document.value, place);
    const code = CODES[String(place.at(-1))]?.(issue, value) ?? 'schema-breach';
    return findingAt(document, place, code, {
      ...(value !== undefined && { value: typeof value === 'string' ? value : JSON.stringify(value).slice(0, 60) }),
      data: { expected: issue.message },
    });
  });
}

type Issue = z.core.$ZodIssue;
const isRange = ({ code }: Issue) => code === 'too_small' || code === 'too_big';

const CODES: Readonly<Record<string, (issue: Issue, value: unknown) => string | undefined>> = {
  id: (issue) => (issue.code === 'invalid_format' ? 'bad-id' : undefined),
  source: () => 'no-source',
  attribute: (_, value) => (typeof value === 'string' ? 'unknown-attribute' : undefined),
  weight: (issue) => (isRange(issue) ? 'weight-out-of-range' : undefined),
};

const valueAt = (value: unknown, place: JsonPath): unknown =>
  place.reduce<unknown>(
    (inner, step) => (inner as Readonly<Record<string | number, unknown>> | undefined)?.[step],
    value,
  );
