import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Pictures } from '../card/pictures.ts';
import { readText } from './files.ts';
import { DRAWINGS } from './places.ts';

/** The drawings of activities and floors that cards show, by id. */
export const picturesOnDisk = (): Pictures => ({ activities: drawingsIn('activities'), floors: drawingsIn('floors') });

function drawingsIn(folder: string): Readonly<Record<string, string>> {
  const names = readdirSync(join(DRAWINGS, folder)).filter((name) => name.endsWith('.svg'));
  return Object.fromEntries(
    names.map((name) => [name.replace(/\.svg$/, ''), readText(join(DRAWINGS, folder, name)).trim()]),
  );
}
