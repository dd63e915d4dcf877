import { readdirSync, readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { contentFiles } from '../../src/command-line/files.ts';
import { readKnowledge } from '../../src/flow/check/read-knowledge.ts';
import type { Knowledge } from '../../src/flow/knowledge.ts';
import { factsOf } from '../../src/profile/facts.ts';
import type { Profile } from '../../src/profile/profile.ts';
import { profileOf } from '../../src/profile/profile-of.ts';
import { MUST_ATTRIBUTES, meets } from '../../src/shortlist/musts.ts';
import { partsOf } from '../../src/shortlist/parts-of.ts';
import { shortlistOf } from '../../src/shortlist/shortlist-of.ts';
import { readStock } from '../../src/stock/read-csv.ts';
import type { Stock } from '../../src/stock/shoe.ts';
import type { Visit } from '../../src/visit/visit.ts';

const at = (path: string) => new URL(`../../${path}`, import.meta.url);
const STORIES = 'flows/fitting/stories/';

let knowledge: Knowledge;
let stock: Stock;
beforeAll(() => {
  const { value } = readKnowledge(contentFiles(at('flows/fitting').pathname));
  const read = readStock(readFileSync(at('demo/stock.csv'), 'utf8'), { asOf: '2026-11-25T09:12' }).value;
  if (value === undefined || read === undefined) throw new Error('The main flow or the demo stock does not load');
  knowledge = value;
  stock = read;
});

function storyVisit(file: string): Visit {
  const story = JSON.parse(readFileSync(at(STORIES + file), 'utf8')) as Partial<Visit>;
  return {
    flow: 'fitting',
    flowVersion: 1,
    language: 'en',
    answers: {},
    overrides: [],
    observation: {},
    tryOns: [],
    ...story,
  };
}
const profiled = (visit: Visit): Profile => profileOf(factsOf(visit, knowledge), visit, knowledge);

const files = readdirSync(at(STORIES)).filter((file) => file.endsWith('.json'));

test('every must that a rule of the main flow can ask for is known', () => {
  const asked = knowledge.rules.flatMap(({ musts = [] }) => musts.map(({ attribute }) => attribute));
  expect(asked.filter((attribute) => !MUST_ATTRIBUTES.includes(attribute))).toEqual([]);
});

describe.each(files)('the demo visitor of %s, in the demo shop', (file) => {
  test('gets pairs that pass every must, fit, and say where each word comes from', () => {
    const visit = storyVisit(file);
    const profile = profiled(visit);
    const { outcome, lineUps } = shortlistOf(profile, visit, knowledge, stock, 1);
    expect(outcome).toBe(profile.outcome);
    expect(lineUps.length).toBe(outcome === 'shortlist' ? partsOf(profile).length : 0);
    for (const [i, { entries, more, removed, ifDropped }] of lineUps.entries()) {
      const part = partsOf(profile)[i];
      const from = new Set(
        [...(part?.needs ?? []), ...(part?.preferences ?? [])].flatMap(({ reasons }) =>
          reasons.map((each) => each.from),
        ),
      );
      for (const entry of [...entries, ...more]) {
        for (const must of part?.musts ?? []) expect(meets(entry.shoe, must)).toBe('yes');
        for (const { box, fits } of entry.boxes) {
          expect(fits).not.toBe('no');
          expect(box.onHand).toBeGreaterThan(box.reserved);
        }
        for (const each of [...entry.reasons, ...entry.misgivings])
          expect(from.has(each.from) || ['stock', 'age-band', 'conditions'].includes(each.from), each.from).toBe(true);
      }
      // Nothing is widened in silence: an empty line-up says which musts emptied it.
      if (entries.length === 0) expect(removed.length).toBeGreaterThan(0);
      if (entries.length > 0) expect(ifDropped).toEqual([]);
    }
  });
});

test('a runner who comes from tall soft shoes is told how to change over when a pair is much lower', () => {
  const visit = storyVisit('runner-tall-soft-to-flat.json');
  const profile = profiled(visit);
  const { lineUps } = shortlistOf(profile, visit, knowledge, stock, 1);
  for (const { shoe, easeIn } of lineUps.flatMap(({ entries, more }) => [...entries, ...more])) {
    const today = profile.facts['today-drop'];
    if (typeof today !== 'number' || shoe.numbers.drop === undefined) continue;
    expect(easeIn?.triggers.includes('lower-drop') ?? false).toBe(today - shoe.numbers.drop > 4);
    if (easeIn !== null) expect(easeIn.unit).toBe('runs');
  }
});
