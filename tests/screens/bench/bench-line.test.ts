import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Calculated } from '../../../src/card/calculated-size.ts';
import { pairsOf } from '../../../src/card/pairs.ts';
import { contentFiles } from '../../../src/command-line/files.ts';
import { readKnowledge } from '../../../src/flow/check/read-knowledge.ts';
import type { Knowledge } from '../../../src/flow/knowledge.ts';
import { pairsOn } from '../../../src/screens/fitter/bench-pairs.ts';
import { addTally, GAPS_TALLY } from '../../../src/screens/fitter/tally.ts';
import { pairsToTry } from '../../../src/screens/fitter/try-on/pairs-to-try.ts';
import { readStock } from '../../../src/stock/read-csv.ts';
import type { Stock } from '../../../src/stock/shoe.ts';
import { memoryStore } from '../../../src/storage/memory-store.ts';
import type { Visit } from '../../../src/visit/visit.ts';
import { benchLine, decidedLine, shoesNamed } from '../../../src/worker/bench-line.ts';

const at = (path: string) => new URL(`../../../${path}`, import.meta.url);
let knowledge: Knowledge;
let stock: Stock;
let visit: Visit;
beforeAll(() => {
  const { value } = readKnowledge(contentFiles(at('flows/fitting').pathname));
  const read = readStock(readFileSync(at('demo/stock.csv'), 'utf8'), { asOf: '2026-11-25T09:12' }).value;
  if (value === undefined || read === undefined) throw new Error('The main flow or the demo stock does not load');
  knowledge = value;
  stock = read;
  const story = JSON.parse(readFileSync(at('flows/fitting/stories/netball-old-sprain.json'), 'utf8'));
  visit = { overrides: [], observation: {}, tryOns: [], ...story };
});
const bench = (aside: readonly string[] = [], pulledIn: readonly string[] = []) =>
  benchLine({ visit, aside, pulledIn }, knowledge, stock, 1);
const ids = (made: ReturnType<typeof bench>) => pairsOn(made).map(({ entry }) => entry.shoe.id);

describe('a pair set aside', () => {
  it('makes room for the next best and is still known by name', () => {
    const [first = ''] = ids(bench());
    const after = bench([first]);
    expect(ids(after)).not.toContain(first);
    expect(ids(after)).toHaveLength(ids(bench()).length);
    expect(after.asideNames[first]).toBe(stock.shoes.find(({ id }) => id === first)?.name);
  });
});

describe('a letter', () => {
  const lettered = (aside: readonly string[], letters: readonly string[]) => {
    const made = benchLine({ visit, aside, pulledIn: [], letters }, knowledge, stock, 1);
    return { made, pairs: pairsOn(made).map(({ letter, entry }) => [entry.shoe.id, letter] as const) };
  };

  it('stays with its pair when another is set aside; the one that moves up takes the next, and who comes back has its own', () => {
    const before = lettered([], []);
    const old = new Map(before.pairs);
    const after = lettered([before.pairs[0]?.[0] ?? ''], before.made.letters);
    const stayed = after.pairs.filter(([id]) => old.has(id));
    expect(stayed.length).toBeGreaterThan(0);
    expect(stayed.map(([id, letter]) => [id, letter])).toEqual(stayed.map(([id]) => [id, old.get(id)]));
    expect(after.pairs.find(([id]) => !old.has(id))?.[1]).toBe('D');
    expect(lettered([], after.made.letters).pairs.slice(0, 3)).toEqual(before.pairs);
  });

  it('is the same at the try-on and on the final card', () => {
    const { made, pairs } = lettered([], []);
    const [, [, second] = ['', ''], [third] = ['']] = pairs;
    expect(pairsToTry(made.line, [], made.letters).map(({ letter }) => letter)).toEqual(['A', second, 'C']);
    const choice = { kind: 'pair', shoe: third, box: '' } as const;
    const decided = decidedLine({ ...made.line, visit: { ...visit, choice } }, knowledge, stock);
    const letterOn = (letters: readonly string[]) =>
      pairsOf(
        decided.shortlist.lineUps,
        'eu',
        { health: new Set(), tellsHealth: true, hiddenMusts: new Set(), withFrom: false },
        letters,
      ).lineUps[0]?.pairs[0]?.letter;
    expect(letterOn(made.letters)).toBe('C');
    expect(letterOn([])).toBe('A');
  });
});

describe('a pair pulled in', () => {
  it('stands after the line-up with a letter of its own, and says which musts it fails', () => {
    const shown = ids(bench());
    const marking = stock.shoes.find(({ id, marks }) => marks['non-marking'] === false && !shown.includes(id));
    if (!marking) throw new Error('The demo shop has no shoe that marks');
    const pair = pairsOn(bench([], [marking.id])).at(-1);
    expect(pair?.entry.shoe.id).toBe(marking.id);
    expect(pair?.letter).toBe('D');
    expect(pair?.fails).toContain('non-marking');
  });

  it('that is in the line-up anyway is shown once', () => {
    const [first = ''] = ids(bench());
    expect(ids(bench([], [first]))).toEqual(ids(bench()));
  });

  it('that has left the catalogue is left out', () => {
    expect(ids(bench([], ['no-such-shoe']))).toEqual(ids(bench()));
  });
});

describe('the decided visit', () => {
  it('keeps the chosen pair with its box, then the second choice, and no other', () => {
    const { line } = bench();
    const [one, two] = line.shortlist.lineUps[0]?.entries ?? [];
    const box = one?.boxes.at(-1)?.box.id ?? '';
    const choice = { kind: 'pair', shoe: one?.shoe.id ?? '', box, second: two?.shoe.id ?? '' } as const;
    const decided = decidedLine({ ...line, visit: { ...visit, choice } }, knowledge, stock);
    const entries = decided.shortlist.lineUps.flatMap((each) => each.entries);
    expect(entries.map(({ shoe }) => shoe.id)).toEqual([choice.shoe, choice.second]);
    expect(entries[0]?.boxes.map((fit) => fit.box.id)).toEqual([box]);
  });

  it('keeps the very box that was chosen, where it was sold since or is none the line would fetch', () => {
    const { line } = bench();
    const [one] = line.shortlist.lineUps[0]?.entries ?? [];
    if (!one) throw new Error('There is a pair');
    const listed = one.boxes.map((fit) => fit.box.id);
    const box = stock.boxes.find(({ id, shoe }) => shoe === one.shoe.id && !listed.includes(id))?.id ?? '';
    const choice = { kind: 'pair', shoe: one.shoe.id, box } as const;
    const sold = { ...stock, boxes: stock.boxes.map((each) => (each.id === box ? { ...each, onHand: 0 } : each)) };
    const decided = decidedLine({ ...line, visit: { ...visit, choice } }, knowledge, sold);
    expect(decided.shortlist.lineUps[0]?.entries[0]?.boxes.map((fit) => fit.box.id)).toEqual([box]);
  });

  it('may be a pair from outside the line-up', () => {
    const { line } = bench();
    const other = stock.shoes.find(({ id }) => !ids(bench()).includes(id))?.id ?? '';
    const choice = { kind: 'pair', shoe: other, box: '' } as const;
    const decided = decidedLine({ ...line, visit: { ...visit, choice } }, knowledge, stock);
    expect(decided.shortlist.lineUps.flatMap(({ entries }) => entries.map(({ shoe }) => shoe.id))).toEqual([other]);
  });

  it('without a pair keeps its line', () => {
    const { line } = bench();
    const none = { ...line, visit: { ...visit, choice: { kind: 'none', reason: 'price' } as const } };
    expect(decidedLine(none, knowledge, stock)).toBe(none);
  });

  it('leaves sums behind, and nothing of the person', async () => {
    const store = memoryStore();
    const { line } = bench();
    const closed = { ...line, visit: { ...visit, choice: { kind: 'none', reason: 'price' } as const } };
    await addTally(store, closed, knowledge.flow, 12);
    await addTally(store, closed, knowledge.flow, undefined);
    const kept = await store.all<{ visits: number; minutes: unknown; counts: readonly unknown[] }>('tallies');
    expect(kept).toHaveLength(1);
    expect(kept[0]?.visits).toBe(2);
    expect(kept[0]?.minutes).toEqual({ sum: 12, visits: 1 });
    expect(kept[0]?.counts).toContainEqual({ topic: 'no-sale', what: 'price', health: false, count: 2 });
    expect(await store.get('tallies', GAPS_TALLY)).toEqual(kept[0]);
  });
});

describe('a model looked for by name', () => {
  const sizeNow = () => bench().line.profile.size;

  it('is found by any part of it, whatever the case, and nothing is found for nothing', () => {
    const name = stock.shoes[5]?.name ?? '';
    expect(shoesNamed(name.slice(1, 6).toUpperCase(), sizeNow(), stock).map((shoe) => shoe.name)).toContain(name);
    expect(shoesNamed('  ', sizeNow(), stock)).toEqual([]);
    expect(shoesNamed('e', sizeNow(), stock).length).toBeLessThanOrEqual(12);
  });

  it('comes with the box that would be fetched of it, and with none where none is in the size', () => {
    const found = shoesNamed('e', sizeNow(), stock);
    const fetched = found.map(({ id }) => {
      const order = { visit, aside: [], pulledIn: [id] };
      const { pulledIn, line } = benchLine(order, knowledge, stock, 1);
      const shown = line.shortlist.lineUps.flatMap(({ entries }) => entries);
      return [...pulledIn.map(({ entry }) => entry), ...shown].find(({ shoe }) => shoe.id === id)?.boxes[0]?.box.id;
    });
    expect(found.map(({ box }) => box?.id)).toEqual(fetched);
    expect(new Set(fetched.map((id) => id === undefined)).size).toBe(2);
  });
});

describe('the calculated size', () => {
  const without = (id: string, { system, label }: Calculated): Stock => ({
    ...stock,
    boxes: stock.boxes.map((box) =>
      box.shoe === id && box.labels[system] === label ? { ...box, reserved: box.onHand } : box,
    ),
  });

  it('is borne by a box of each pair that is not said to lack it', () => {
    const { notHere, ...made } = bench();
    const shown = pairsOn(made).map(({ entry }) => entry.shoe.id);
    for (const id of shown.filter((each) => !notHere?.shoes.includes(each))) {
      const own = stock.boxes.filter(({ shoe, onHand, reserved }) => shoe === id && onHand > reserved);
      expect(own.some(({ labels }) => notHere && labels[notHere.size.system] === notHere.size.label)).toBe(true);
    }
    expect(shown.length).toBeGreaterThan(notHere?.shoes.length ?? shown.length);
  });

  it('is said to be missing once the last pair in it is put by', () => {
    const { notHere } = bench();
    const there = ids(bench()).find((id) => !notHere?.shoes.includes(id)) ?? '';
    if (!notHere) throw new Error('A size can be calculated');
    const left = without(there, notHere.size);
    expect(benchLine({ visit, aside: [], pulledIn: [there] }, knowledge, left, 1).notHere?.shoes).toContain(there);
  });
});
