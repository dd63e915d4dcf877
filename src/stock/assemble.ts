import type { Finding } from '../units/result.ts';
import { checkShoe } from './check-shoe.ts';
import { COLUMNS } from './columns.ts';
import type { CellValue } from './read-cell.ts';
import type { ReadRow } from './read-row.ts';
import { type Box, LABEL_SYSTEMS, type LabelSystem, type Shoe } from './shoe.ts';

type Values = ReadonlyMap<string, CellValue>;
interface Assembled {
  readonly shoes: readonly Shoe[];
  /** Grouped by model, in the models' order. */
  readonly boxes: readonly Box[];
  readonly findings: readonly Finding[];
}

const SHOE_COLUMNS = COLUMNS.filter(({ field }) => field.of === 'shoe');
const BOX_COLUMNS = COLUMNS.filter(({ field }) => field.of === 'box');

/**
 * Puts lines together into models and boxes. A model is defined by its first good line that names it, wherever that
 * stands, so that a list sorted by place or size still loads; other lines leave its columns blank or repeat them.
 */
export function assemble(rows: readonly ReadRow[]): Assembled {
  const findings: Finding[] = [];
  const refuse = (row: ReadRow, code: string, more: Partial<Finding> = {}): false => {
    findings.push({ code, severity: 'error', line: row.line, ...more });
    return false;
  };
  const defined = new Map<string, { readonly row: ReadRow; readonly shoe: Shoe }>();
  const unsound = new Set<ReadRow>();
  for (const row of rows) {
    const id = text(row.values, 'shoe');
    if (id === undefined || defined.has(id) || !row.values.has('model')) continue;
    const shoe = shoeOf(row.values);
    const fault = checkShoe(shoe.numbers);
    if (fault) {
      unsound.add(row);
      refuse(row, fault.code, fault);
    } else defined.set(id, { row, shoe });
  }

  const boxes = new Map<string, Box[]>([...defined.keys()].map((id) => [id, []]));
  const extras = new Map<string, Readonly<Record<string, string>>>();
  const boxLines = new Map<string, number>();
  for (const row of rows) {
    if (row.refused || unsound.has(row)) continue;
    const id = text(row.values, 'shoe');
    if (id === undefined) {
      refuse(row, 'stock-blank', { column: 'shoe' });
      continue;
    }
    const first = defined.get(id);
    if (!first) {
      refuse(row, 'stock-model-missing', { column: 'model', value: id });
      continue;
    }
    if (!agrees(row, first.row, refuse)) continue;
    if (BOX_COLUMNS.some(({ header }) => row.values.has(header))) {
      const box = boxOf(row, id, boxLines, refuse);
      if (!box) continue;
      boxLines.set(box.id, row.line);
      boxes.get(id)?.push(box);
      if (box.reserved > box.onHand) {
        findings.push({
          code: 'stock-reserved-over',
          severity: 'note',
          line: row.line,
          column: 'reserved',
          value: box.id,
        });
      }
    } else if (extras.has(id)) refuse(row, 'stock-row-twice', { value: id });
    else extras.set(id, row.extra);
  }
  return {
    shoes: [...defined].map(([id, { shoe }]) => withExtra(shoe, extras.get(id) ?? {})),
    boxes: [...boxes.values()].flat(),
    findings,
  };
}

type Refuse = (row: ReadRow, code: string, more?: Partial<Finding>) => false;

/** A later line may leave the model's columns blank or repeat them, and nothing else. */
function agrees(row: ReadRow, first: ReadRow, refuse: Refuse): boolean {
  if (row === first) return true;
  for (const { header } of SHOE_COLUMNS) {
    const value = row.values.get(header);
    if (value === undefined) continue;
    const before = first.values.get(header);
    if (before !== undefined && written(value) === written(before)) continue;
    const data = { first: before === undefined ? '' : written(before), firstLine: first.line };
    return refuse(row, 'stock-row-contradicts', { column: header, value: written(value), data });
  }
  return true;
}

const written = (value: CellValue): string =>
  typeof value === 'object' ? value.join(' | ') : typeof value === 'boolean' ? (value ? 'yes' : 'no') : String(value);

function shoeOf(values: Values): Shoe {
  const numbers: Record<string, CellValue> = {};
  const marks: Record<string, CellValue> = {};
  const lists: Record<string, CellValue> = {};
  for (const { header, field } of SHOE_COLUMNS) {
    const value = values.get(header);
    if (value === undefined || field.part !== 'attribute') continue;
    const { kind, key } = field.row;
    (kind === 'mark' ? marks : kind === 'list' ? lists : numbers)[key] = value;
  }
  const massSize = text(values, 'mass size');
  const sizeOffset = values.get('runs (mm)') as number | undefined;
  const usWomenOffset = values.get('us women offset') as number | undefined;
  return {
    id: text(values, 'shoe') ?? '',
    name: text(values, 'model') ?? '',
    use: (values.get('use') as readonly string[] | undefined) ?? [],
    shelf: (text(values, 'shelf') as Shoe['shelf'] | undefined) ?? 'any',
    numbers: numbers as Shoe['numbers'],
    marks: marks as Shoe['marks'],
    lists: lists as Shoe['lists'],
    ...(massSize === undefined ? {} : { massSize }),
    ...(sizeOffset === undefined ? {} : { sizeOffset }),
    ...(usWomenOffset === undefined ? {} : { usWomenOffset }),
  };
}

function boxOf(row: ReadRow, shoe: string, known: ReadonlyMap<string, number>, refuse: Refuse): Box | false {
  const { values, extra } = row;
  const id = text(values, 'box');
  if (id === undefined) return refuse(row, 'stock-blank', { column: 'box' });
  const earlier = known.get(id);
  if (earlier !== undefined) {
    return refuse(row, 'stock-box-twice', { column: 'box', value: id, data: { firstLine: earlier } });
  }
  const labels = Object.fromEntries(
    LABEL_SYSTEMS.flatMap((system): [LabelSystem, string][] => {
      const label = text(values, system.replace('-', ' '));
      return label === undefined ? [] : [[system, label]];
    }),
  );
  const innerLength = values.get('inner length (mm)') as number | undefined;
  if (innerLength === undefined && Object.keys(labels).length === 0) {
    return refuse(row, 'stock-box-without-size', { value: id });
  }
  const onHand = values.get('on hand') as number | undefined;
  if (onHand === undefined) return refuse(row, 'stock-blank', { column: 'on hand' });
  const width = text(values, 'width') as Box['width'];
  const box: Box = {
    id,
    shoe,
    labels,
    ...(innerLength === undefined ? {} : { innerLength }),
    ...(width === undefined ? {} : { width }),
    place: text(values, 'place') ?? '',
    onHand,
    reserved: (values.get('reserved') as number | undefined) ?? 0,
  };
  return withExtra(box, extra);
}

const text = (values: Values, header: string): string | undefined => values.get(header) as string | undefined;

const withExtra = <T extends Shoe | Box>(one: T, extra: Readonly<Record<string, string>>): T =>
  Object.keys(extra).length === 0 ? one : { ...one, extra };
