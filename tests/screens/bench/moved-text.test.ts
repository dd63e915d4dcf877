import { describe, expect, it } from 'vitest';
import { loadKnowledge, loadStock, loadVisit } from '../../../src/command-line/load.ts';
import { wordsOnDisk } from '../../../src/command-line/words-on-disk.ts';
import { NO_NOTES } from '../../../src/screens/fitter/bench-ticket.ts';
import { movedBetween, movedTexts } from '../../../src/screens/fitter/moved-text.ts';
import { type BoxMark, stockToday } from '../../../src/stock/today.ts';
import type { Visit } from '../../../src/visit/visit.ts';
import { benchLine } from '../../../src/worker/bench-line.ts';

const DAY = '2026-11-25';
const knowledge = loadKnowledge();
const { stock } = loadStock('demo/stock.csv', `${DAY}T09:12:00`);
const { visit } = loadVisit('flows/fitting/stories/netball-old-sprain.json', knowledge);
const words = wordsOnDisk('en');
const lineWith = (marks: readonly BoxMark[]) =>
  benchLine({ visit, aside: [], pulledIn: [] }, knowledge, stockToday(stock, marks, DAY), 1);

describe('what moved at the bench', () => {
  it.each([
    ['not-on-the-shelf', 'not on the shelf'],
    ['sold', 'sold'],
  ] as const)('says of a pair whose boxes were marked %s that this is why it went out', (what, said) => {
    const before = lineWith([]);
    const [first] = before.line.shortlist.lineUps[0]?.entries ?? [];
    if (!first) throw new Error('There is a first pair');
    // Every pair of every box: one tap takes one.
    const boxes = stock.boxes.filter(({ shoe }) => shoe === first.shoe.id);
    const marks = boxes.flatMap(({ id, onHand }) =>
      Array.from({ length: onHand }, (): BoxMark => ({ box: id, what, at: `${DAY}T10:30:00` })),
    );
    const moved = movedBetween(before, lineWith(marks), marks);
    const texts = movedTexts(moved, NO_NOTES, words);
    expect(texts).toContain(`${first.shoe.name} went out: ${said}`);
    expect(texts.filter((text) => text.endsWith(said))).toHaveLength(1);
  });

  it('tells in one sentence what one changed answer moved, and never calls a pair that goes out made for it', () => {
    const other: Visit = {
      ...visit,
      overrides: [...visit.overrides, { question: 'activity', value: 'easy-walks', by: 'LT', reason: 'mistapped' }],
    };
    const after = benchLine({ visit: other, aside: [], pulledIn: [] }, knowledge, stock, 1);
    const texts = movedTexts(movedBetween(lineWith([]), after), NO_NOTES, words);
    const question = words.say('question.activity.ask');
    expect(texts.filter((text) => text.includes(question))).toHaveLength(1);
    expect(texts.join()).toContain('went out (not made for it)');
    expect(texts.join()).not.toContain('went out (made for it)');
  });
});
