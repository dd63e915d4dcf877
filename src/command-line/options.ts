import { type ParseArgsConfig, parseArgs } from 'node:util';
import { usage } from './refusal.ts';

type Spec = NonNullable<ParseArgsConfig['options']>;
export interface Given {
  readonly files: readonly string[];
  text(name: string): string | undefined;
  flag(name: string): boolean;
  /** A number as typed, comma or point; letters are refused. */
  number(name: string): number | undefined;
  needed(name: string): string;
}

/** Reads a command's words by Node's own parser; anything it does not know is a usage error that says what. */
export function readOptions(args: readonly string[], spec: Spec): Given {
  let read: ReturnType<typeof parseArgs>;
  try {
    read = parseArgs({ args: [...args], options: spec, allowPositionals: true, strict: true });
  } catch (reason) {
    throw usage('option-unknown', reason instanceof Error ? reason.message : String(reason));
  }
  const text = (name: string): string | undefined => {
    const value = read.values[name];
    return typeof value === 'string' ? value : undefined;
  };
  return {
    files: read.positionals,
    text,
    flag: (name) => read.values[name] === true,
    needed: (name) => {
      const value = text(name);
      if (value === undefined) throw usage('option-missing', `--${name}`);
      return value;
    },
    number: (name) => {
      const value = text(name);
      if (value === undefined) return undefined;
      const number = Number(value.replace(',', '.'));
      if (!Number.isFinite(number)) throw usage('option-not-a-number', `--${name} ${value}`);
      return number;
    },
  };
}

export const TEXT = { type: 'string' } as const;
export const FLAG = { type: 'boolean' } as const;

/** `2026-11-25`, a day that exists; today where none is given. */
export function dateOf(given: Given): string {
  const text = given.text('date');
  if (text === undefined) return new Date().toISOString().slice(0, 10);
  const day = new Date(`${text}T00:00:00Z`);
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text) || Number.isNaN(day.getTime()) || day.toISOString().slice(0, 10) !== text) {
    throw usage('date-wrong', text);
  }
  return text;
}
