import type { Fault, Path, Report } from './fault.ts';

/**
 * Reads one value that came from outside. What will not do is reported and comes back as nothing.
 *
 * The command line checks flows with a schema library; that one is too heavy for a tablet's first load, and visits are
 * read there too. So visits have these few readers.
 */
export type Reader<T> = (value: unknown, path: Path, report: Report) => T | undefined;

/** Longest text taken from outside, in characters: a bench note, not a book. */
const LONGEST_TEXT = 500;

export const text: Reader<string> = (value, path, report) => {
  if (typeof value !== 'string') return refuse(report, path, { code: 'field-not-text', value });
  if (value.length > LONGEST_TEXT)
    return refuse(report, path, { code: 'field-too-long', value, data: { most: LONGEST_TEXT } });
  return value;
};

export const truth: Reader<boolean> = (value, path, report) =>
  typeof value === 'boolean' ? value : refuse(report, path, { code: 'field-not-true-or-false', value });

export const oneOf =
  <const T extends string>(words: readonly T[]): Reader<T> =>
  (value, path, report) =>
    words.find((word) => word === value) ??
    refuse(report, path, { code: 'field-not-a-word-of', value, data: { expected: words.join(', ') } });

/** A number from `from` to `to`; `whole` refuses fractions. */
export const numberIn =
  (from: number, to: number, whole = false): Reader<number> =>
  (value, path, report) => {
    if (typeof value !== 'number') return refuse(report, path, { code: 'field-not-a-number', value });
    const fits = value >= from && value <= to && (!whole || Number.isInteger(value));
    return fits ? value : refuse(report, path, { code: 'field-out-of-range', value, data: { from, to } });
  };

export const listOf =
  <T>(each: Reader<T>): Reader<readonly T[]> =>
  (value, path, report) => {
    if (!Array.isArray(value)) return refuse(report, path, { code: 'field-not-a-list', value });
    return value.map((item, at) => each(item, [...path, at], report)).filter((item) => item !== undefined);
  };

/** Named values, all of one kind. */
export const mapOf =
  <T>(each: Reader<T>): Reader<Readonly<Record<string, T>>> =>
  (value, path, report) => {
    if (!isGroup(value)) return refuse(report, path, { code: 'field-not-a-group', value });
    const read = Object.entries(value).map(([key, item]) => [key, each(item, [...path, key], report)] as const);
    return Object.fromEntries(read.filter((pair): pair is [string, T] => pair[1] !== undefined));
  };

type Fields<T> = { readonly [Key in keyof T]-?: Reader<Exclude<T[Key], undefined>> };

/**
 * Named fields. A field that is not one of these is reported by name; a needed one that is missing, or will not do,
 * takes the whole group with it.
 */
export const group =
  <T extends object>(fields: Fields<T>, needed: readonly (keyof T & string)[]): Reader<T> =>
  (value, path, report) => {
    if (!isGroup(value)) return refuse(report, path, { code: 'field-not-a-group', value });
    const names = Object.keys(fields);
    for (const key of Object.keys(value)) {
      if (!names.includes(key))
        report([...path, key], { code: 'field-unknown', value: key, data: { expected: names.join(', ') } });
    }
    const read: Record<string, unknown> = {};
    for (const [key, reader] of Object.entries(fields) as [keyof T & string, Reader<unknown>][]) {
      const had = Object.hasOwn(value, key) && value[key] !== undefined;
      if (!had && needed.includes(key)) report(path, { code: 'field-missing', value: key });
      const item = had ? reader(value[key], [...path, key], report) : undefined;
      if (item !== undefined) read[key] = item;
    }
    return needed.every((key) => Object.hasOwn(read, key)) ? (read as T) : undefined;
  };

export const isGroup = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function refuse(report: Report, path: Path, fault: Fault): undefined {
  report(path, fault);
  return undefined;
}
