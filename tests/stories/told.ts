import { readdirSync, readFileSync } from 'node:fs';
import type { CardFacts, Copy } from '../../src/card/card.ts';
import { readShop } from '../../src/card/read-shop.ts';
import { loadKnowledge, loadStock } from '../../src/command-line/load.ts';
import { SEED } from '../../src/command-line/shortlist.ts';
import { wordsOnDisk } from '../../src/command-line/words-on-disk.ts';
import { tablesOf } from '../../src/flow/options.ts';
import { cardOfLine, type Line, lineOf } from '../../src/pipeline.ts';
import { readStory } from '../../src/visit/story.ts';
import type { Visit } from '../../src/visit/visit.ts';
import type { Words } from '../../src/words/words.ts';
import { type Expectation, expectationOf } from './expectation.ts';

const FOLDER = 'flows/fitting/stories';
export const knowledge = loadKnowledge();
export const { stock } = loadStock('demo/stock.csv', '2026-11-25T09:12:00');
const shop = readShop(readFileSync('demo/shop.json', 'utf8'), 'demo/shop.json').value;
if (!shop) throw new Error('The demo shop file does not read');
const demoShop = shop;

/** A story with what it expects, and the line it comes to in the demo shop. */
export interface Told {
  readonly name: string;
  readonly visit: Visit;
  readonly expected: Expectation;
  readonly line: Line;
}

export const told: readonly Told[] = readdirSync(FOLDER)
  .filter((file) => file.endsWith('.json'))
  .sort()
  .map((file) => {
    const path = `${FOLDER}/${file}`;
    const { value, findings } = readStory(readFileSync(path, 'utf8'), path, knowledge.flow, tablesOf(knowledge));
    if (!value) throw new Error(`${path}: ${JSON.stringify(findings)}`);
    const { name, visit, expect } = value;
    return { name, visit, expected: expectationOf(expect), line: lineOf(visit, knowledge, stock, SEED, false) };
  });

export const cardOfVisit = (line: Line, copy: Copy = 'customer'): CardFacts =>
  cardOfLine(line, knowledge, stock, { shop: demoShop, date: '2026-11-25', ticket: 'maple 14', copy });

const WORDS = new Map<string, Words>();
export function wordsIn(language: string): Words {
  const words = WORDS.get(language) ?? wordsOnDisk(language);
  WORDS.set(language, words);
  return words;
}
