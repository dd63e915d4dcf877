import { readFileSync } from 'node:fs';
import { writeCardCode } from '../../src/visit/card-code.ts';
import { freshVisit } from '../../src/visit/fresh-visit.ts';
import { flow, storyNamed } from './walk.ts';

const rows = (file: string): readonly { id: string; group: string }[] =>
  JSON.parse(readFileSync(new URL(`../../flows/fitting/${file}.json`, import.meta.url), 'utf8'));
export const tables = { activities: rows('activities'), floors: rows('floors'), 'shoe-kinds': rows('shoe-kinds') };

/** The code of a story's card, as the card prints it. */
export function cardCode(story: string, { language = 'en', version = flow.version } = {}): string {
  const { answers } = storyNamed(story);
  return writeCardCode(freshVisit(flow, language, answers), 'none', { ...flow, version }, tables);
}
