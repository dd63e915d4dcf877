import { readdirSync, readFileSync } from 'node:fs';
import type { CardFacts, Copy } from '../../src/card/card.ts';
import { readShop } from '../../src/card/read-shop.ts';
import type { Shop } from '../../src/card/shop.ts';
import { loadKnowledge, loadStock, loadVisit } from '../../src/command-line/load.ts';
import { wordsOnDisk } from '../../src/command-line/words-on-disk.ts';
import type { Knowledge } from '../../src/flow/knowledge.ts';
import { cardOfLine, type Line, lineOf } from '../../src/pipeline.ts';
import type { Stock } from '../../src/stock/shoe.ts';
import type { Words } from '../../src/words/words.ts';
import { decidedLine } from '../../src/worker/bench-line.ts';

/** Every story, taken through the whole line with the demo shop's stock: what sample cards and tests of layout show. */
const STORIES = 'flows/fitting/stories';
export const SAMPLE_DATE = '2026-11-25';
export const SAMPLE_FORMATS = ['a5', 'a5-two-up', 'a4', 'letter', 'roll80'] as const;
/** The fitter's formats: A4 and Letter; the rest are made for customers. */
export const copyFor = (format: string): Copy => (format === 'a4' || format === 'letter' ? 'fitter' : 'customer');

export const storyNames: readonly string[] = readdirSync(STORIES)
  .map((name) => name.replace(/\.json$/, ''))
  .sort();

interface Shared {
  readonly knowledge: Knowledge;
  readonly stock: Stock;
}
let shared: Shared | undefined;
function sharedOnce(): Shared {
  shared ??= {
    knowledge: loadKnowledge(),
    stock: loadStock('demo/stock.csv', `${SAMPLE_DATE}T09:12:00`).stock,
  };
  return shared;
}

const logo = readFileSync('demo/logo.svg', 'utf8');
const shop = readShop(readFileSync('demo/shop.json', 'utf8'), 'demo/shop.json', logo).value;
if (!shop) throw new Error('The demo shop file reads');

const lines = new Map<string, Line>();

/** Worked out once for each story, since every format and both copies start from the same line. */
export function sampleLine(story: string, change: LineChange = {}): Line {
  const key = `${story} ${JSON.stringify(change)}`;
  const known = lines.get(key);
  if (known) return known;
  const { knowledge, stock } = sharedOnce();
  const { visit } = loadVisit(`${STORIES}/${story}.json`, knowledge);
  const fresh = lineOf({ ...visit, ...change }, knowledge, stock, 1);
  lines.set(key, fresh);
  return fresh;
}
/** What the fitter may add to a visit that changes its line. */
type LineChange = Partial<Pick<Line['visit'], 'overrides' | 'observation'>>;

export function sampleFacts(
  story: string,
  copy: Copy,
  change: Partial<Line['visit']> = {},
  shopChange: Partial<Shop> = {},
): CardFacts {
  const { knowledge, stock } = sharedOnce();
  const { overrides, observation } = change;
  const line = sampleLine(story, { ...(overrides && { overrides }), ...(observation && { observation }) });
  const visited = decidedLine({ ...line, visit: { ...line.visit, ...change } }, knowledge, stock);
  return cardOfLine(visited, knowledge, stock, {
    shop: { ...(shop as Shop), ...shopChange },
    date: SAMPLE_DATE,
    ticket: 'maple 14',
    copy,
  });
}

const words = new Map<string, Words>();
export function sampleWords(language: string): Words {
  const known = words.get(language) ?? wordsOnDisk(language);
  words.set(language, known);
  return known;
}
