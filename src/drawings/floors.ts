import { byName } from './by-name.ts';

/** Drawings of floors, by id. */
export const drawings = byName(
  import.meta.glob<string>('./floors/*.svg', { eager: true, query: '?raw', import: 'default' }),
);
