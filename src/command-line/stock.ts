import { measureOf } from '../card/font/metrics.ts';
import { unprintableInStock } from '../card/unprintable-stock.ts';
import { readStock } from '../stock/read-csv.ts';
import { readText } from './files.ts';
import { fontsOnDisk } from './fonts-on-disk.ts';
import { FLAG, readOptions } from './options.ts';
import { usage } from './refusal.ts';
import { json, type Said } from './said.ts';

/** `fit stock <stock.csv> [--json]`: what loads, what is refused and why, by line. */
export function stock(args: readonly string[]): Said {
  const given = readOptions(args, { json: FLAG });
  const path = given.files[0];
  if (!path) throw usage('option-missing', '<stock.csv>');
  const read = readStock(readText(path), { asOf: new Date().toISOString() });
  const { value } = read;
  const findings = [...read.findings, ...(value ? unprintableInStock(value, measureOf(fontsOnDisk())) : [])];
  const refused = new Set(findings.filter(({ severity }) => severity === 'error').map(({ line }) => line)).size;
  const loaded = value?.boxes.length ?? 0;
  const named = findings.map((finding) => ({ file: path, ...finding }));
  if (given.flag('json')) {
    const told = findings.map(({ code, line, column, value: cell }) => ({ code, line, column, value: cell }));
    return { text: json({ loaded, refused, shoes: value?.shoes.length ?? 0, findings: told }), findings: named };
  }
  const shoes = value?.shoes.length ?? 0;
  const text = `${counted(shoes, 'model')} in ${counted(loaded, 'box', 'boxes')} loaded, ${counted(refused, 'line')} refused.\n`;
  return { text, findings: named };
}

const counted = (count: number, one: string, more = `${one}s`): string => `${count} ${count === 1 ? one : more}`;
