import { byName } from './by-name.ts';

/** Drawings of activities, by id. */
export const drawings = byName(
  import.meta.glob<string>('./activities/*.svg', { eager: true, query: '?raw', import: 'default' }),
);
