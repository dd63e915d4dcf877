import { expect, it } from 'vitest';
import { lineOf } from '../../src/pipeline.ts';
import type { Visit } from '../../src/visit/visit.ts';
import { knowledge, stock } from './told.ts';
import { TWELVE } from './twelve-activities.ts';

/** One customer, twelve activities; everything else answered the same, invented. */
const doing = (activity: string): Visit => ({
  flow: 'fitting',
  flowVersion: knowledge.flow.version,
  language: 'en',
  answers: {
    reason: 'worn-out',
    shelf: 'men',
    'age-band': '18-to-64',
    activity,
    'second-activity': 'none',
    'now-size': { value: 42, unit: 'eu' },
    'now-feel': 'right',
    signs: ['none'],
  },
  overrides: [],
  observation: {},
  tryOns: [],
});
const lines = TWELVE.map((activity) => lineOf(doing(activity), knowledge, stock, 1, false));

it('twelve activities, all else the same, want twelve different things', () => {
  const wanted = lines.map(({ profile }) =>
    JSON.stringify(profile.needs.map(({ attribute, ideal, importance }) => [attribute, ideal, importance])),
  );
  expect(new Set(wanted).size).toBe(TWELVE.length);
});

it('twelve activities, all else the same, begin with at least eight different pairs', () => {
  const first = lines.map(({ shortlist }) => shortlist.lineUps[0]?.entries[0]?.shoe.id);
  expect(first).not.toContain(undefined);
  expect(new Set(first).size, first.join(' ')).toBeGreaterThanOrEqual(8);
});
