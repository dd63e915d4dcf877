import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import type { CardFacts, Copy } from '../../src/card/card.ts';
import { readShop } from '../../src/card/read-shop.ts';
import { textOf } from '../../src/card/text/text-of.ts';
import { loadKnowledge, loadStock } from '../../src/command-line/load.ts';
import { wordsOnDisk } from '../../src/command-line/words-on-disk.ts';
import type { Knowledge } from '../../src/flow/knowledge.ts';
import { tablesOf } from '../../src/flow/options.ts';
import { cardOfLine, type Line, lineOf } from '../../src/pipeline.ts';
import type { Stock } from '../../src/stock/shoe.ts';
import type { Visit } from '../../src/visit/visit.ts';
import { anyVisit } from '../visit/any-visit.ts';

export const knowledge = loadKnowledge();
export const tables = tablesOf(knowledge);
const { stock: whole } = loadStock('demo/stock.csv', '2026-11-25T09:12:00');
/** Every fourth model of the demo stock: laws do not depend on how many there are, and many visits are drawn. */
const some = new Set(whole.shoes.filter((_, at) => at % 4 === 0).map(({ id }) => id));
export const stock: Stock = {
  ...whole,
  shoes: whole.shoes.filter(({ id }) => some.has(id)),
  boxes: whole.boxes.filter(({ shoe }) => some.has(shoe)),
};
const shop = readShop(readFileSync('demo/shop.json', 'utf8'), 'demo/shop.json').value;
if (!shop) throw new Error('The demo shop file does not read');
const demoShop = shop;
const words = { en: wordsOnDisk('en'), de: wordsOnDisk('de') };
export const languages = Object.values(words);

export const lineFor = (visit: Visit, of: Knowledge = knowledge, from: Stock = stock): Line =>
  lineOf(visit, of, from, 1, false);

export const cardFor = (line: Line, copy: Copy = 'customer'): CardFacts =>
  cardOfLine(line, knowledge, stock, { shop: demoShop, date: '2026-11-25', ticket: 'maple 14', copy });

/** The card in words of the visit's language; a hole in the words throws. */
export const textFor = (visit: Visit, copy: Copy = 'customer') =>
  textOf(cardFor(lineFor(visit), copy), visit.language === 'de' ? words.de : words.en);

export const visits = anyVisit(knowledge.flow, tables);

/** A visit that ends in pairs: nothing to see a clinician about, and something to do. */
export const shopping = visits.map(
  ({ hold: _hold, overrides: _overrides, ...visit }): Visit => ({
    ...visit,
    overrides: [],
    answers: {
      ...visit.answers,
      reason: 'worn-out',
      shelf: 'any',
      signs: ['none'],
      conditions: ['none'],
      inside: ['none'],
      lately: ['none'],
      'place-rules': ['none'],
      closure: 'no-preference',
      never: ['none'],
      budget: 'no-preference',
      'now-size': { value: 42, unit: 'eu' },
      'now-troubles': ['worn-through'],
    },
  }),
);

/** The same things in another order. */
export const shuffled = <T>(list: readonly T[]): fc.Arbitrary<T[]> =>
  fc.shuffledSubarray([...list], { minLength: list.length });
