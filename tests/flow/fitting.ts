import { readFileSync } from 'node:fs';
import type { Flow } from '../../src/flow/format.ts';
import type { Tables } from '../../src/flow/options.ts';

const read = (file: string) =>
  JSON.parse(readFileSync(new URL(`../../flows/fitting/${file}`, import.meta.url), 'utf8'));

/** The shop's own flow, for laws that should hold of the real thing. */
export const FITTING: Flow = read('flow.json');
export const FITTING_TABLES: Tables = {
  activities: read('activities.json'),
  floors: read('floors.json'),
  'shoe-kinds': read('shoe-kinds.json'),
};
