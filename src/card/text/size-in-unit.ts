import type { Words } from '../../words/words.ts';

/** These follow their number; a size system goes before it, as on a box. */
const LENGTHS: readonly string[] = ['mm', 'cm'];

/** A size with its unit: `EU 42`, `20.5 cm`. */
export function sizeInUnit(size: string, unit: string, words: Words): string {
  const said = words.say(`unit.${unit}`);
  return LENGTHS.includes(unit) ? `${size} ${said}` : `${said} ${size}`;
}
