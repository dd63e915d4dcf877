import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { readDocument } from '../flow/check/document.ts';
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
  return document.value as Bundle;
}
