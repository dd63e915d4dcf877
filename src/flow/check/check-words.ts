import type { Finding } from '../../units/result.ts';
import type { Content } from './content.ts';
import type { JsonDocument } from './document.ts';
import { fileName, findingAt } from './finding-at.ts';
import { longestText } from './text-bounds.ts';
import { type WordKeys, wordKeys } from './word-keys.ts';
import { placeholdersIn, type WordText, wordTexts } from './word-texts.ts';

type Group = 'words' | 'knowledge' | 'shared';
const GROUPS: readonly Group[] = ['words', 'knowledge', 'shared'];

/**
 * Words that are missing, too many, too long, or that ask for other data than the first language does.
 *
 * The flow's own words are held to what its questions, tables and rules need; shared words only to each other.
 */
export function checkWords({ flow, words, rows }: Content): readonly Finding[] {
  if (!flow) return [];
  const keys = wordKeys(flow, rows);
  const [first, ...others] = flow.languages;
  return GROUPS.flatMap((group) => {
    const textsOf = (language: string) => inGroup(words.get(language) ?? [], group);
    const model = textsOf(first ?? '');
    const expected = group === 'shared' ? undefined : keys[group];
    return flow.languages.flatMap((language) => {
      const { documents, texts } = textsOf(language);
      const wanted = expected ?? { needed: model.texts.map(({ key }) => key), allowed: new Set<string>() };
      if (documents.length === 0) return noFile(language, group, wanted);
      return [
        ...missing(documents, texts, wanted),
        ...extra(texts, wanted),
        ...tooLong(texts),
        ...(others.includes(language) ? otherPlaceholders(model.texts, texts, first ?? '') : []),
      ];
    });
  });
}

function inGroup(all: readonly JsonDocument[], group: Group) {
  const documents = all.filter(({ path }) => groupOf(path) === group);
  return { documents, texts: documents.flatMap(wordTexts) };
}

function groupOf(path: string): Group {
  const name = fileName(path);
  if (name.startsWith('words.')) return 'words';
  return name.startsWith('knowledge.') ? 'knowledge' : 'shared';
}

function noFile(language: string, group: Group, { needed }: WordKeys): readonly Finding[] {
  if (needed.length === 0) return [];
  const file = group === 'shared' ? `words/${language}/` : `${group}.${language}.json`;
  return [{ code: 'words-file-missing', severity: 'error', file, value: language }];
}

function missing(documents: readonly JsonDocument[], texts: readonly WordText[], { needed }: WordKeys) {
  const there = new Set(texts.map(({ key }) => key));
  const [document] = documents;
  return [...new Set(needed)].flatMap((key) =>
    document && !there.has(key) ? [findingAt(document, key.split('.'), 'words-missing', { value: key })] : [],
  );
}

function extra(texts: readonly WordText[], { needed, allowed }: WordKeys) {
  const known = new Set(needed);
  return texts.flatMap(({ key, document, place }) =>
    known.has(key) || allowed.has(key) ? [] : [findingAt(document, place, 'words-extra', { value: key })],
  );
}

function tooLong(texts: readonly WordText[]) {
  return texts.flatMap(({ key, text, document, place }) => {
    const bound = longestText(key);
    const length = [...text].length;
    if (bound === undefined || length <= bound) return [];
    return [findingAt(document, place, 'text-too-long', { value: key, data: { length, bound } })];
  });
}

/** Plural forms of one text may leave a number out, so that all forms of a key count together. */
function otherPlaceholders(model: readonly WordText[], texts: readonly WordText[], first: string) {
  const asked = placeholdersByKey(model);
  const here = placeholdersByKey(texts);
  return [...new Map(texts.map((text) => [text.key, text])).values()].flatMap(({ key, document, place }) => {
    const expected = asked.get(key);
    const found = here.get(key) ?? '';
    if (expected === undefined || expected === found) return [];
    const data = { expected: expected || '–', found: found || '–', language: first };
    return [findingAt(document, place, 'placeholders-differ', { value: key, data })];
  });
}

function placeholdersByKey(texts: readonly WordText[]): ReadonlyMap<string, string> {
  const joined = new Map<string, string>();
  for (const { key, text } of texts) joined.set(key, (joined.get(key) ?? '') + text);
  return new Map([...joined].map(([key, text]) => [key, placeholdersIn(text).join(', ')]));
}
