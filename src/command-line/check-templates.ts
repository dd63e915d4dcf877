import { existsSync, readdirSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { readTemplate } from '../card/check-template.ts';
import type { Finding } from '../units/result.ts';
import { isFolder, readText } from './files.ts';
import { offThePage } from './trial-card.ts';

/** Whether a folder is one of print templates: it has folders with a `template.json`. */
export const holdsTemplates = (folder: string): boolean => templatesIn(folder).length > 0;

/** Everything wrong with the print templates in a folder, each one's file, its name and a trial card laid out on it. */
export const checkTemplates = (folder: string): readonly Finding[] => templatesIn(folder).flatMap(findingsOf);

function findingsOf(path: string): readonly Finding[] {
  const { value, findings } = readTemplate(path, readText(path));
  if (!value) return findings;
  const folder = basename(dirname(path));
  const named = value.id === folder ? [] : [{ code: 'template-misnamed', value: value.id, data: { folder } }];
  const { over, cut } = offThePage(value);
  const noRoom = [
    ...over.map((what) => ({ code: 'template-overflows', value: what })),
    ...cut.map((what) => ({ code: 'template-cuts', value: what })),
  ];
  return [...named, ...noRoom].map((finding) => ({ severity: 'error', file: path, ...finding }));
}

const templatesIn = (folder: string): readonly string[] =>
  isFolder(folder)
    ? readdirSync(folder)
        .map((name) => join(folder, name, 'template.json'))
        .filter((path) => existsSync(path))
        .sort()
    : [];
