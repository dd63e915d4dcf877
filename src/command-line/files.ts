import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import type { ContentFile } from '../flow/check/document.ts';
import { Refusal } from './refusal.ts';

/** A file's text, or a refusal that names the file. */
export function readText(path: string): string {
  try {
    // Some editors begin a file with a mark that is no part of what was written.
    return readFileSync(path, 'utf8').replace(/^\uFEFF/, '');
  } catch {
    throw new Refusal('file-missing', path);
  }
}

export const isFolder = (path: string): boolean => {
  try {
    return statSync(path).isDirectory();
  } catch {
    return false;
  }
};

/** Writes the whole file or nothing: to a name beside it first, then in one step to its own. */
export function writeWhole(path: string, content: string | Uint8Array): void {
  const beside = join(dirname(path), `.${basename(path)}.${process.pid}.part`);
  try {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(beside, content);
    renameSync(beside, path);
  } catch {
    if (isFolder(dirname(path))) rmSync(beside, { force: true });
    throw new Refusal('file-unwritable', path);
  }
}

/** The JSON files of a folder, in order; none where there is no such folder. */
export const jsonIn = (folder: string): readonly string[] =>
  isFolder(folder)
    ? readdirSync(folder)
        .filter((name) => name.endsWith('.json'))
        .sort()
        .map((name) => join(folder, name))
    : [];

/** Every file of a flow folder, with the sources and the shared words beside it: what `check` and the line read. */
export function contentFiles(flowFolder: string): readonly ContentFile[] {
  if (!isFolder(flowFolder)) throw new Refusal('folder-missing', flowFolder);
  const shared = dirname(flowFolder.replace(/\/+$/, ''));
  const languages = isFolder(join(shared, 'words')) ? readdirSync(join(shared, 'words')).sort() : [];
  const paths = [
    ...jsonIn(flowFolder),
    ...jsonIn(join(flowFolder, 'stories')),
    join(shared, 'sources.json'),
    ...languages.flatMap((language) => jsonIn(join(shared, 'words', language))),
  ];
  return paths.map((path) => ({ path, text: readText(path) }));
}
