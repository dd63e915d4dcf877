import { expect, it } from 'vitest';
import { sampleFacts, sampleLine } from './sample-lines.ts';

const rulesOnPaper = (story: string) =>
  new Set(sampleFacts(story, 'fitter').bench?.needs.flatMap(({ reasons }) => reasons.map(({ rule }) => rule)));

it('a walker’s fitter reads why walking asks for it, and nothing of lifting or bouncing', () => {
  const story = 'older-walker-after-fall';
  const known = sampleLine(story).profile.needs.flatMap(({ reasons }) => reasons.map(({ rule }) => rule));
  expect(known).toEqual(expect.arrayContaining(['walking-roll', 'squat-firm']));
  const said = rulesOnPaper(story);
  expect([said.has('walking-roll'), said.has('squat-firm'), said.has('bounce-drop')]).toEqual([true, false, false]);
});

it('a lifter’s fitter does', () => {
  expect(rulesOnPaper('new-lifter-in-running-shoes').has('squat-firm')).toBe(true);
});

it('a netballer’s fitter reads of side steps and turns, and nothing of lifting or long shifts', () => {
  const said = rulesOnPaper('netball-old-sprain');
  expect(['side-base', 'turning', 'impact-cushion'].filter((rule) => !said.has(rule))).toEqual([]);
  expect(['squat-firm', 'toe-drag', 'standing-height'].filter((rule) => said.has(rule))).toEqual([]);
});
