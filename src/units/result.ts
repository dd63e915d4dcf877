/**
 * What came of reading something that came from outside: the value, with any findings about it.
 *
 * Bad data from outside never throws. It comes back as findings: a code and data, with the words in the
 * language files (`finding.<code>`). `value` is absent when nothing usable was read.
 */
export interface Reading<T> {
  readonly value?: T;
  readonly findings: readonly Finding[];
}

/** One thing wrong with, or worth saying about, data from outside. `code` is a key under `finding` in the words. */
export interface Finding {
  readonly code: string;
  /** `error` refuses the thing it is about; `note` does not. */
  readonly severity: 'error' | 'note';
  readonly file?: string;
  /** Line in the file, from 1. */
  readonly line?: number;
  /** A CSV column, by its header. */
  readonly column?: string;
  /** Where in the content: `section why, question reason`. */
  readonly at?: string;
  /** The offending value, as it stood. */
  readonly value?: string;
  /** Further data for the words, such as what was expected. */
  readonly data?: Readonly<Record<string, string | number>>;
}
