import type { Finding } from '../units/result.ts';

/** Where a value stands in what is read: keys and list places, outermost first. */
export type Path = readonly (string | number)[];

/** What is wrong at a place. The reader's caller turns it into a finding with file and line, where there are any. */
export interface Fault {
  readonly code: string;
  readonly value?: unknown;
  readonly data?: Readonly<Record<string, string | number>>;
  /** Worth saying, but nothing is refused for it. */
  readonly note?: true;
}
export type Report = (path: Path, fault: Fault) => void;

/** A fault at a place, as a finding. */
export function findingOf(path: Path, { code, value, data, note }: Fault): Finding {
  return {
    code,
    severity: note ? 'note' : 'error',
    ...(path.length > 0 && { at: path.join(' › ') }),
    ...(value !== undefined && { value: shown(value) }),
    ...(data && { data }),
  };
}

const LONGEST_SHOWN = 80;
function shown(value: unknown): string {
  const text = typeof value === 'string' ? value : JSON.stringify(value);
  return text.length > LONGEST_SHOWN ? `${text.slice(0, LONGEST_SHOWN - 1)}…` : text;
}
