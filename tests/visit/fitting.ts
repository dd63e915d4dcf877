import { readdirSync, readFileSync } from 'node:fs';
import type { Flow } from '../../src/flow/format.ts';
import type { Tables } from '../../src/flow/options.ts';

const folder = new URL('../../flows/fitting/', import.meta.url);
const rowsOf = (name: string) =>
  JSON.parse(readFileSync(new URL(`${name}.json`, folder), 'utf8')) as Tables['activities'];

/** The shop's own flow and tables, as they stand in the repository. */
export const fittingFlow: Flow = JSON.parse(readFileSync(new URL('flow.json', folder), 'utf8'));
export const fittingTables: Tables = {
  activities: rowsOf('activities'),
  floors: rowsOf('floors'),
  'shoe-kinds': rowsOf('shoe-kinds'),
};

/** Every story file: its name and its text. */
export const storyFiles: readonly (readonly [string, string])[] = readdirSync(new URL('stories/', folder))
  .filter((name) => name.endsWith('.json'))
  .sort()
  .map((name) => [name, readFileSync(new URL(`stories/${name}`, folder), 'utf8')]);
