import { mapOf } from '../flow/map.ts';
import { writeWhole } from './files.ts';
import { loadKnowledge } from './load.ts';
import { readOptions, TEXT } from './options.ts';
import type { Said } from './said.ts';
import { wordsOnDisk } from './words-on-disk.ts';

/** `fit map [flow folder] --out map.svg`: the flow drawn, its conditions in words. */
export function map(args: readonly string[]): Said {
  const given = readOptions(args, { out: TEXT, language: TEXT });
  const out = given.needed('out');
  const { flow } = loadKnowledge(given.files[0]);
  writeWhole(out, mapOf(flow, wordsOnDisk(given.text('language') ?? 'en')));
  return { text: `${out}\n`, findings: [] };
}
