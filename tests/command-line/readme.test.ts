import { readFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { command, ownFolder, STOCK, STORY } from './running.ts';

const own = ownFolder();
afterAll(own.gone);

/** What a reader would put where the README leaves room. */
const PUT: readonly (readonly [RegExp, string])[] = [
  [/\[flow folder\]/g, 'flows/fitting'],
  [/<answers\.json…?>/g, STORY],
  [/<stock\.csv>/g, STOCK],
  [/card\.pdf\|folder/g, own.at('cards')],
  [/\bmap\.svg/g, own.at('map.svg')],
  [/samples$/g, own.at('samples')],
  [/flows\/fitting\/stories\/\*\.json/g, STORY],
  [/https:\/\/…/g, 'https://kiosk.shop.example'],
  [/--ball …/g, '--ball 195'],
  [/--girth …/g, '--girth 240'],
  [/--width …/g, '--width 99'],
  [/--activity …/g, '--activity tennis'],
  [/\b(men|a5|customer)\|[\w|-]+/g, '$1'],
  [/[[\]]/g, ' '],
];

const lines = [...readFileSync('README.md', 'utf8').matchAll(/```sh\n([\s\S]*?)```/g)]
  .flatMap(([, block]) => (block ?? '').replaceAll(/\n\s+/g, ' ').split('\n'))
  .filter((line) => line.startsWith('npm run -s fit -- '));

describe('every command in the README', () => {
  it('is one of the eight, and each of the eight is there', () => {
    const names = new Set(lines.map((line) => line.split(' ')[5]));
    expect([...names].sort()).toEqual(['card', 'check', 'map', 'profile', 'rules', 'shortlist', 'size', 'stock']);
  });

  it.each(lines)('runs with every option it names: %s', async (line) => {
    const filled = PUT.reduce((text, [from, to]) => text.replaceAll(from, to), line.replace('npm run -s fit -- ', ''));
    const args = [...filled.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain ?? '');
    const { code, err } = await command(...args);
    expect(code, `${args.join(' ')}\n${err}`).toBe(0);
  });
});
