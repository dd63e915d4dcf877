import { sentencesOf } from '../../src/words/bundle.ts';
import { wordFiles } from './word-files.ts';

export interface Spoken {
  /** Word file and key. */
  readonly at: string;
  readonly key: string;
  /** Without data and quoted field names, which are not speech. */
  readonly text: string;
  readonly whole: string;
  readonly english: string | undefined;
}

/** Every sentence of a language beside the English one. */
export function sentencesIn(language: string): readonly Spoken[] {
  const english = wordFiles('en');
  return [...wordFiles(language)].flatMap(([area, bundle]) =>
    [...sentencesOf(bundle)].map(([key, whole]) => ({
      at: `${area}: ${key}`,
      key,
      text: whole.replace(/\{\{[^}]*\}\}|„[^“]*“|«[^»]*»/g, ''),
      whole,
      english: sentencesOf(english.get(area) ?? {}).get(key),
    })),
  );
}

/** What a failing check shows: where, and what stands there. */
export const told = (found: readonly Spoken[]): readonly string[] => found.map(({ at, whole }) => `${at}: ${whole}`);
