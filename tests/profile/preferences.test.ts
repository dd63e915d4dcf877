import { describe, expect, it } from 'vitest';
import { USES } from '../../src/attributes/uses.ts';
import type { Answers } from '../../src/flow/answers.ts';
import { MAIN } from './main-knowledge.ts';
import { rule, withRules } from './toy-knowledge.ts';
import { profileOfAnswers } from './toy-visit.ts';

const preferences = (answers: Answers) => profileOfAnswers(answers, MAIN).preferences ?? [];
const madeFor = (answers: Answers) => preferences(answers).find(({ kind }) => kind === 'use');
const wish = (answers: Answers, id: string) => preferences(answers).find(({ code }) => code === `wish-${id}`);

describe('what a shoe is sold for', () => {
  it('is preferred to suit what the customer does, by the answer that says so', () => {
    expect(madeFor({ activity: 'road-running' })).toMatchObject({
      importance: 0.667,
      parts: [{ uses: ['road'], share: 1 }],
      reasons: [{ from: 'activity', rule: 'made-for', grade: 'common-practice' }],
    });
  });

  it('suits two activities by their shares', () => {
    const both = madeFor({
      activity: 'everyday-walking',
      'second-activity': 'brisk-walking',
      'second-share': 'half',
    });
    expect(both?.reasons.map(({ from }) => from)).toEqual(['activity', 'second-activity']);
    expect(both?.kind === 'use' && both.parts.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 2);
  });

  it('is no matter where somebody does something else: their loads alone decide', () => {
    expect(madeFor({ activity: 'something-else', 'else-loads': { jumping: 'mostly' } })).toBeUndefined();
    expect(madeFor({ activity: 'drumming' })).toBeUndefined();
  });

  it('matters less beside something else, by its share', () => {
    const beside = madeFor({
      activity: 'something-else',
      'else-loads': { standing: 'mostly' },
      'second-activity': 'kitchen',
      'second-share': 'now-and-then',
    });
    expect(beside?.importance).toBeGreaterThan(0);
    expect(beside?.importance).toBeLessThan(0.3);
  });

  it('is named in the table only by words that a wall can have, each once', () => {
    for (const { id, uses = [] } of MAIN.activities) {
      expect(
        uses.filter((use) => !USES.some((known) => known === use)),
        id,
      ).toEqual([]);
      expect(new Set(uses).size, id).toBe(uses.length);
    }
    // What no shop in this trade sells shoes for by itself, or sells only as another kind of footwear.
    expect(MAIN.activities.filter(({ uses }) => uses === undefined).map(({ id }) => id)).toEqual([
      'football-grass',
      'road-cycling',
      'ballet-pointe',
      'climbing',
      'drumming',
    ]);
  });
});

describe('a wish', () => {
  const wet = { activity: 'hill-walking', floors: { mud: 'mostly' } } as const;

  it('for dry feet follows from ground that is often wet, and from no other', () => {
    expect(wish({ ...wet, wet: 'often' }, 'dry-or-drain')?.reasons.map(({ from }) => from)).toEqual(['wet']);
    expect(wish({ ...wet, wet: 'sometimes' }, 'dry-or-drain')).toBeUndefined();
    expect(wish({ ...wet, wet: 'dry' }, 'dry-or-drain')).toBeUndefined();
  });

  it('for a sole tested against slipping follows from slipping on a hard floor, unless the place demands one anyway', () => {
    const slips = { activity: 'everyday-walking', 'now-troubles': ['slips-on-floor'] };
    const onTiles = { ...slips, floors: { tiles: 'mostly' } };
    expect(wish(onTiles, 'slip-mark')?.reasons.map(({ from }) => from)).toEqual(['now-troubles:slips-on-floor']);
    expect(wish({ ...slips, floors: { mud: 'mostly' } }, 'slip-mark')).toBeUndefined();
    expect(wish({ ...onTiles, 'place-rules': ['slip-mark'] }, 'slip-mark')).toBeUndefined();
    expect(wish({ ...onTiles, 'now-troubles': ['wobbles'] }, 'slip-mark')).toBeUndefined();
  });

  it('for something to fasten follows from age or falls, and said by both counts once', () => {
    const walker = { activity: 'everyday-walking' };
    const older = wish({ ...walker, 'age-band': '65-plus' }, 'fastened');
    const falls = wish({ ...walker, conditions: ['falls-or-unsteady'] }, 'fastened');
    const both = wish({ ...walker, 'age-band': '65-plus', conditions: ['falls-or-unsteady'] }, 'fastened');
    expect(older?.importance).toBeLessThan(falls?.importance ?? 0);
    expect(both?.importance).toBe(falls?.importance);
    expect(both?.reasons).toHaveLength(2);
    expect(wish(walker, 'fastened')).toBeUndefined();
  });

  it('keeps within the cap of its grade', () => {
    const anyOf = [{ attribute: 'waterproof', value: true }] as const;
    const importance = (grade: 'strong' | 'weak') =>
      profileOfAnswers(
        { activity: 'netball' },
        withRules(rule('dry', { grade, wishes: [{ id: 'dry', anyOf, weight: 1 }] })),
      ).preferences?.find(({ code }) => code === 'wish-dry')?.importance;
    expect(importance('strong')).toBe(0.667);
    expect(importance('weak')).toBe(0.233);
  });
});

describe('a need', () => {
  it('says which way the wishes about it point, where they agree', () => {
    const toward = (answers: Answers) =>
      profileOfAnswers({ activity: 'road-running', ...answers }, MAIN).needs.find(
        ({ attribute }) => attribute === 'mass',
      )?.toward;
    expect(toward({ liking: { weight: 'lighter' } })).toBe('less');
    expect(toward({ liking: { weight: 'heavier' } })).toBe('more');
    expect(toward({ liking: { weight: 'heavier' }, 'past-pairs': ['hated-too-heavy'] })).toBeUndefined();
    expect(toward({})).toBeUndefined();
  });
});
