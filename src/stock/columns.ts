import type { AttributeRow } from '../attributes/table.ts';
import { ATTRIBUTES } from '../attributes/table.ts';
import type { LabelSystem } from './shoe.ts';

type ShoePart = 'id' | 'name' | 'use' | 'shelf' | 'mass-size' | 'size-offset' | 'us-women-offset';

/** What a column of a stock list holds. */
export type Field =
  | { readonly of: 'shoe'; readonly part: ShoePart }
  | { readonly of: 'shoe'; readonly part: 'attribute'; readonly row: AttributeRow }
  | { readonly of: 'box'; readonly part: 'id' | 'inner-length' | 'width' | 'place' | 'on-hand' | 'reserved' }
  | { readonly of: 'box'; readonly part: 'label'; readonly system: LabelSystem };

export interface Column {
  /** As written. Read in any order, case and language that `aliases` knows. */
  readonly header: string;
  readonly aliases: readonly string[];
  readonly field: Field;
}

const shoe = (header: string, part: ShoePart, ...aliases: string[]) =>
  ({ header, aliases, field: { of: 'shoe', part } }) satisfies Column;
const box = (
  header: string,
  part: 'id' | 'inner-length' | 'width' | 'place' | 'on-hand' | 'reserved',
  ...aliases: string[]
) => ({ header, aliases, field: { of: 'box', part } }) satisfies Column;
const label = (header: string, system: LabelSystem, ...aliases: string[]) =>
  ({ header, aliases, field: { of: 'box', part: 'label', system } }) satisfies Column;

/** Every column of a stock list, in the order written: the model, its properties from the attribute table, the box. */
export const COLUMNS: readonly Column[] = [
  shoe('shoe', 'id', 'shoe id', 'model id', 'article', 'article number', 'artikel', 'artikelnummer', 'schuh'),
  shoe('model', 'name', 'model name', 'name', 'modell'),
  shoe('use', 'use', 'uses', 'category', 'verwendung', 'einsatz', 'kategorie'),
  shoe('shelf', 'shelf', 'gender', 'department', 'regal', 'abteilung', 'geschlecht'),
  ...ATTRIBUTES.map(
    (row): Column => ({ header: row.column, aliases: row.aliases, field: { of: 'shoe', part: 'attribute', row } }),
  ),
  shoe('mass size', 'mass-size', 'weight size', 'weighed in size', 'gewogen in größe'),
  shoe('runs (mm)', 'size-offset', 'size offset', 'runs large', 'größenabweichung', 'fällt aus'),
  shoe('us women offset', 'us-women-offset', 'us women minus men', 'us damen abstand'),
  box('box', 'id', 'box id', 'barcode', 'karton', 'kartonnummer'),
  label('eu', 'eu', 'size eu', 'eu size', 'eur', 'größe', 'größe eu'),
  label('uk', 'uk', 'size uk', 'uk size', 'größe uk'),
  label('us men', 'us-men', 'size us men', 'us m', 'us herren'),
  label('us women', 'us-women', 'size us women', 'us w', 'us damen'),
  label('uk child', 'uk-child', 'size uk child', 'uk junior', 'uk kinder'),
  label('us child', 'us-child', 'size us child', 'us junior', 'us kinder'),
  label('mondopoint', 'mondopoint', 'mondo', 'size mondopoint'),
  label('cm', 'cm', 'size cm', 'jp', 'größe cm'),
  box('inner length (mm)', 'inner-length', 'inside length', 'innenlänge'),
  box('width', 'width', 'box width', 'weite'),
  box('place', 'place', 'location', 'stands at', 'platz', 'lagerplatz'),
  box('on hand', 'on-hand', 'in stock', 'stock', 'quantity', 'qty', 'bestand', 'menge', 'anzahl'),
  box('reserved', 'reserved', 'on hold', 'reserviert', 'zurückgelegt'),
];

/** Without these, by header, nothing of a list is loaded: a line would be neither a model nor a box. */
export const NEEDED: readonly string[] = ['shoe', 'model', 'box'];

/** What tells the size of a box. One of them must be filled in for each. */
export const tellsSize = ({ field }: Column): boolean =>
  field.of === 'box' && (field.part === 'label' || field.part === 'inner-length');
