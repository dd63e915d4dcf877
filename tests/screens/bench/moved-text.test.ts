import { describe, expect, it } from 'vitest';
import { loadKnowledge, loadStock, loadVisit } from '../../../src/command-line/load.ts';
import { wordsOnDisk } from '../../../src/command-line/words-on-disk.ts';
import { NO_NOTES } from '../../../src/screens/fitter/bench-ticket.ts';
import { movedBetween, movedText } from '../../../src/screens/fitter/moved-text.ts';
import { type BoxMark, stockToday } from '../../../src/stock/today.ts';
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
    const texts = moved.map((each) => movedText(each, NO_NOTES, words));
    expect(texts).toContain(`${first.shoe.name} went out: ${said}`);
    expect(texts.filter((text) => text.endsWith(said))).toHaveLength(1);
  });
});
