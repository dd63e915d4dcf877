import { expect, test } from 'vitest';
import { loadKnowledge } from '../../src/command-line/load.ts';
import { sampleFacts, sampleLine, storyNames } from './sample-lines.ts';

const beforeChoosing = loadKnowledge()
  .advice.filter(({ untilChosen }) => untilChosen)
  .map(({ id }) => id);

test('whoever has chosen a pair is not told to bring the old one or to try a wider box', () => {
  let left = 0;
  for (const story of storyNames) {
    const [first] = sampleLine(story).shortlist.lineUps.flatMap(({ entries }) => entries);
    const box = first?.boxes[0]?.box.id;
    if (!first || box === undefined) continue;
    const before = sampleFacts(story, 'customer').advice.map(({ code }) => code);
    const after = sampleFacts(story, 'customer', { choice: { kind: 'pair', shoe: first.shoe.id, box } });
    expect(after.chosen?.shoe).toBe(first.shoe.id);
    const codes = after.advice.map(({ code }) => code);
    expect(codes.filter((code) => beforeChoosing.includes(code))).toEqual([]);
    left += before.filter((code) => beforeChoosing.includes(code)).length;
    expect(codes).toEqual(before.filter((code) => !beforeChoosing.includes(code)));
  }
  expect(left).toBeGreaterThan(10);
});
