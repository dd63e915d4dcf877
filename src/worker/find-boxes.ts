import { LABEL_SYSTEMS, type LabelSystem, type Stock } from '../stock/shoe.ts';
import { plainText } from '../units/typed-number.ts';
import type { BoxSearch, FoundBox, FoundBoxes } from './stock-service.ts';

/** Boxes shown at once; the rest are counted. Our choice. */
const SHOWN = 50;

/** Words in front of a size that name its system: `EU 42`, `US men 9`. */
const SYSTEM = /^(eu|uk child|us child|us men|us women|uk|mondopoint|cm)\s+/;

/** Boxes by part of their model's name or their own number, by size as printed, by the beginning of their shelf. */
export function findBoxes(stock: Stock, search: BoxSearch): FoundBoxes {
  const name = plain(search.name);
  const place = plain(search.place);
  const size = sizeAsked(search.size);
  const shoes = new Map(stock.shoes.map((shoe) => [shoe.id, shoe]));
  const named = new Set(stock.shoes.filter((shoe) => plain(shoe.name).includes(name)).map(({ id }) => id));
  const found: FoundBox[] = [];
  let of = 0;
  for (const box of stock.boxes) {
    if (!named.has(box.shoe) && plain(box.id) !== name) continue;
    if (place !== '' && !plain(box.place).startsWith(place)) continue;
    if (size && !size.systems.some((system) => plainSize(box.labels[system] ?? '') === size.label)) continue;
    of += 1;
    const shoe = shoes.get(box.shoe);
    if (found.length < SHOWN && shoe) found.push({ box, name: shoe.name, shelf: shoe.shelf });
  }
  return { found, of };
}

function sizeAsked(typed: string): { readonly systems: readonly LabelSystem[]; readonly label: string } | undefined {
  const text = plain(plainText(typed)).replaceAll('-', ' ');
  if (text === '') return undefined;
  const system = SYSTEM.exec(text)?.[1]?.replace(' ', '-') as LabelSystem | undefined;
  return { systems: system ? [system] : LABEL_SYSTEMS, label: plainSize(text.replace(SYSTEM, '')) };
}

const plain = (text: string): string => text.trim().toLocaleLowerCase().replaceAll(/\s+/g, ' ');

/** `42,5`, `42½` and `42 1/2` are one size. */
const plainSize = (label: string): string =>
  plain(label)
    .replace(',', '.')
    .replace(/\s*½|\s+1\/2$/, '.5')
    .replace(/\s*⅓/, ' 1/3')
    .replace(/\s*⅔/, ' 2/3');
