import type { ListItem, ListRow } from '../attributes/row.ts';
import { BOX_WIDTHS, SHELVES } from './shoe.ts';

const item = (id: string, ...aliases: readonly string[]): ListItem => ({ id, aliases });

const shelfAliases = {
  men: ["men's", 'mens', 'm', 'male', 'herren', 'männer'],
  women: ["women's", 'womens', 'w', 'f', 'female', 'ladies', 'damen', 'frauen'],
  junior: ['juniors', 'kids', 'children', 'child', 'youth', 'kinder', 'jugend'],
  any: ['unisex', 'all', 'u', 'adult', 'alle'],
};
export const SHELF_WORDS: readonly ListItem[] = SHELVES.map((id) => item(id, ...shelfAliases[id]));

const widthAliases = {
  narrow: ['schmal'],
  standard: ['regular', 'normal', 'medium'],
  wide: ['weit'],
  'extra-wide': ['extra weit'],
};
export const WIDTH_WORDS: readonly ListItem[] = BOX_WIDTHS.map((id) => item(id, ...widthAliases[id]));

export const YES_NO: readonly ListItem[] = [
  item('yes', 'y', 'true', '1', 'x', 'ja', 'j', 'wahr'),
  item('no', 'n', 'false', '0', 'nein', 'falsch'),
];

/** The id that a word stands for, in any case and with spaces or hyphens; no answer when it is none of them. */
export function readWord(words: readonly ListItem[], text: string): string | undefined {
  const plain = plainWord(text);
  return words.find(({ id, aliases }) => plainWord(id) === plain || aliases.some((alias) => plainWord(alias) === plain))
    ?.id;
}

const plainWord = (text: string): string =>
  text
    .toLowerCase()
    .replaceAll(/[\s_-]+/g, ' ')
    .trim();

/**
 * Several words in one cell, between bars, semicolons, commas (Arabic ones too) or line breaks. Each once, in the order given.
 *
 * @example
 * readList(attribute('closure'), 'Laces | klett') // { items: ['laces', 'strap'], strange: [] }
 * readList(attribute('materials'), 'mesh, seaweed') // { items: ['mesh', 'seaweed'], strange: ['seaweed'] }
 */
export function readList(
  row: Pick<ListRow, 'items'>,
  text: string,
): { readonly items: readonly string[]; readonly strange: readonly string[] } {
  const parts = text
    .split(/[|;,؛،\n]/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  const strange = parts.filter((part) => readWord(row.items, part) === undefined);
  return { items: [...new Set(parts.map((part) => readWord(row.items, part) ?? part))], strange };
}
