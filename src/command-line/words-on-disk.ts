import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { type JsonPath, readDocument } from '../flow/check/document.ts';
import type { Bundle } from '../words/bundle.ts';
import type { Words } from '../words/words.ts';
import { wordsOf } from '../words/words-of.ts';
import { isFolder, jsonIn, readText } from './files.ts';
import { FLOW_FOLDER, SHARED_WORDS } from './places.ts';
import { Refusal, usage } from './refusal.ts';

/** The words of one language: the shared files, then the flow's own. */
export function wordsOnDisk(language: string): Words {
  const folder = join(SHARED_WORDS, language);
  if (!/^[a-z]{2,3}(-[A-Za-z0-9]+)*$/.test(language) || !isFolder(folder)) throw usage('language-unknown', language);
  const files = [
    ...jsonIn(folder),
    ...readdirSync(FLOW_FOLDER)
      .filter((name) => name.endsWith(`.${language}.json`))
      .map((name) => join(FLOW_FOLDER, name)),
  ].sort();
  return wordsOf(language, files.map(bundleIn));
}

function bundleIn(path: string): Bundle {
  const { document, findings } = readDocument({ path, text: readText(path) });
  if (!document || findings.length > 0) throw new Refusal(findings);
  const wrong = noSentence(document.value, []);
  if (wrong) {
    const line = document.lineOf(wrong);
    throw new Refusal([{ code: 'words-no-sentence', severity: 'error', file: path, line, value: wrong.join('.') }]);
  }
  return document.value as Bundle;
}

/** Where something stands that is neither a sentence nor a group of them. */
function noSentence(value: unknown, place: JsonPath): JsonPath | undefined {
  if (typeof value === 'string' && place.length > 0) return undefined;
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return place;
  return Object.entries(value)
    .map(([key, inside]) => noSentence(inside, [...place, key]))
    .find((found) => found !== undefined);
}
