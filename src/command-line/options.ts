import { type ParseArgsConfig, parseArgs } from 'node:util';
import { plainText } from '../units/typed-number.ts';
import { usage } from './refusal.ts';

type Spec = NonNullable<ParseArgsConfig['options']>;
export interface Given {
  readonly files: readonly string[];
  text(name: string): string | undefined;
  flag(name: string): boolean;
  /** A plain decimal number, comma or point, in the digits of any keyboard. */
  number(name: string): number | undefined;
  needed(name: string): string;
}

/** Not what the machine takes for a number: `0x106`, `1e2` and an empty text are slips of somebody's hand. */
const DECIMAL = /^-?\d{1,9}(?:[.,]\d{1,9})?$/;

/** Reads a command's words by Node's own parser; anything it does not know is a usage error that says what. */
export function readOptions(args: readonly string[], options: Spec, mostFiles = 1): Given {
  const read = strictly(args, options);
  const stray = read.positionals[mostFiles];
  if (stray !== undefined) throw usage('stray', stray);
  const names = read.tokens.flatMap((token) => (token.kind === 'option' ? [token.rawName] : []));
  const twice = names.find((name, at) => names.indexOf(name) < at);
  if (twice !== undefined) throw usage('option-twice', twice);
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
      const plain = plainText(value);
      if (!DECIMAL.test(plain)) throw usage('option-not-a-number', `--${name} ${value}`);
      return Number(plain.replace(',', '.'));
    },
  };
}

function strictly(args: readonly string[], options: Spec) {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true, strict: true, tokens: true });
  } catch (reason) {
    // The parser says it in two or three lines; of them the option is wanted, between the first quotes.
    const { code, message } = reason as Error & { readonly code?: string };
    const option = /'(-[^\s',]*)/.exec(message)?.[1] ?? message;
    throw usage(code === 'ERR_PARSE_ARGS_INVALID_OPTION_VALUE' ? 'option-value' : 'option-unknown', option);
  }
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
