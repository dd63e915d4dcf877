import { readdirSync, readFileSync } from 'node:fs';
import { type Bundle, mergeBundles } from '../../src/words/bundle.ts';

const flows = new URL('../../flows/', import.meta.url);
const read = (path: string) => JSON.parse(readFileSync(new URL(path, flows), 'utf8')) as Bundle;

/** Languages that have a folder of words. */
export const LANGUAGES = readdirSync(new URL('words/', flows)).sort();

/** Word files of a language by area: every file of its shared folder, and every `<area>.<language>.json` of the flow. */
export function wordFiles(language: string): ReadonlyMap<string, Bundle> {
  const shared = readdirSync(new URL(`words/${language}/`, flows)).map(
    (name) => [`words/${name.replace('.json', '')}`, read(`words/${language}/${name}`)] as const,
  );
  const ofFlow = readdirSync(new URL('fitting/', flows))
    .filter((name) => name.endsWith(`.${language}.json`))
    .map((name) => [`fitting/${name.split('.')[0]}`, read(`fitting/${name}`)] as const);
  return new Map([...shared, ...ofFlow]);
}

export const allWords = (language: string): Bundle => mergeBundles([...wordFiles(language).values()]);
