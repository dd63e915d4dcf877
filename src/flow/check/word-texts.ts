import type { JsonDocument, JsonPath } from './document.ts';

/** One text of a language, and where it stands. */
export interface WordText {
  /** Dotted path, without a plural ending. */
  readonly key: string;
  readonly text: string;
  readonly document: JsonDocument;
  readonly place: JsonPath;
}

/** Plural endings of i18next's JSON format, after the categories of Unicode's plural rules. */
const PLURAL = /_(zero|one|two|few|many|other)$/;

export function wordTexts(document: JsonDocument): readonly WordText[] {
  const below = (value: unknown, place: JsonPath): readonly WordText[] => {
    if (typeof value === 'string') return [{ key: place.join('.').replace(PLURAL, ''), text: value, document, place }];
    if (typeof value !== 'object' || value === null || Array.isArray(value)) return [];
    return Object.entries(value).flatMap(([key, inner]) => (key === '$schema' ? [] : below(inner, [...place, key])));
  };
  return below(document.value, []);
}

/** The data a text asks for, by name, sorted: `{{count}}`, `{{count, number}}`. */
export const placeholdersIn = (text: string): readonly string[] =>
  [...new Set([...text.matchAll(/\{\{-?\s*([^},\s]+)[^}]*\}\}/g)].map(([, name]) => name ?? ''))].sort();
