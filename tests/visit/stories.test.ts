import { describe, expect, it } from 'vitest';
import { firstUnanswered, inPlay, questionsOf } from '../../src/flow/route.ts';
import { readCardCode, writeCardCode } from '../../src/visit/card-code.ts';
import { withOverrides } from '../../src/visit/effective.ts';
import { readStored, toStored } from '../../src/visit/stored.ts';
import { readStory, type Story, writeStory } from '../../src/visit/story.ts';
import { fittingFlow as flow, storyFiles, fittingTables as tables } from './fitting.ts';

const stories = storyFiles.map(([file, text]) => [file, readStory(text, file, flow, tables)] as const);
const named = (name: string): Story => {
  const story = stories.find(([file]) => file === `${name}.json`)?.[1].value;
  if (story === undefined) throw new Error(`no story ${name}`);
  return story;
};
/** QR version 9 at level M takes this many bytes (ISO/IEC 18004, capacity table). */
const QR_9_M = 180;
const ORIGIN = 'https://kiosk.shop.example';

describe.each(stories)('the visitor in %s', (file, { value: story, findings }) => {
  it('is read without a finding', () => {
    expect(findings).toEqual([]);
    expect(`${story?.name}.json`).toBe(file);
  });

  it('is told in one sentence', () => {
    expect(story?.about).toMatch(/^[A-Z][^.!?]*\.$/);
  });

  it('has answered every question asked, and no other', () => {
    const { answers } = (story ?? named('')).visit;
    expect(firstUnanswered(flow, answers)).toBeUndefined();
    expect(Object.keys(answers)).toEqual(inPlay(flow, answers));
  });

  it('comes back the same from a story file and from storage', () => {
    const read = story ?? named('');
    expect(readStory(writeStory(read), file, flow, tables)).toEqual({ value: read, findings: [] });
    expect(readStored(toStored(read.visit), flow, tables).value).toEqual(read.visit);
  });

  it('fits with all answers, health too, into a code small enough to print', () => {
    const visit = { ...(story ?? named('')).visit, printHealth: true };
    const code = writeCardCode(visit, 'none', flow, tables, ORIGIN);
    expect(code.length).toBeLessThan(QR_9_M);
    expect(readCardCode(code, flow, tables).value?.answers).toEqual(withOverrides(visit));
  });
});

describe('the visitors together', () => {
  it('are at least 24', () => {
    expect(stories.length).toBeGreaterThanOrEqual(24);
  });

  it('keep to the screens the flow promises: typical, and the short ways', () => {
    const { typical, shortWays, longest } = flow.bounds;
    const screens = (name: string) => inPlay(flow, named(name).visit.answers).length;
    expect(screens(typical.story)).toBeLessThanOrEqual(typical.screens);
    expect(screens('same-again')).toBeLessThanOrEqual(shortWays[0]?.screens ?? 0);
    expect(screens('just-the-size')).toBeLessThanOrEqual(shortWays[1]?.screens ?? 0);
    for (const [, { value }] of stories) {
      expect(inPlay(flow, value?.visit.answers ?? {}).length).toBeLessThanOrEqual(longest);
    }
  });

  it('meet every question of the flow', () => {
    const met = new Set(stories.flatMap(([, { value }]) => Object.keys(value?.visit.answers ?? {})));
    expect(questionsOf(flow).filter(({ id }) => !met.has(id))).toEqual([]);
  });
});
