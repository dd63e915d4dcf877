import { describe, expect, it } from 'vitest';
import { inPlay } from '../../src/flow/route.ts';
import { effectiveAnswers } from '../../src/visit/effective.ts';
import { HOLDS } from '../../src/visit/visit.ts';
import { knowledge, type Told, told } from './told.ts';

const byName = told.map((story) => [story.name, story] as const);
const using = (pick: (story: Told) => readonly unknown[]) => byName.filter(([, story]) => pick(story).length > 0);

describe.each(byName)('the visitor in %s', (_, { visit, expected, line }) => {
  const { profile, shortlist } = line;

  it('is asked what they should be, and no more', () => {
    const route = inPlay(knowledge.flow, visit.answers);
    expect(route).toHaveLength(expected.screens);
    expect(route).toEqual(expect.arrayContaining(expected.asked));
    expect(route.filter((id) => expected.notAsked.includes(id))).toEqual([]);
  });

  it('has every answer that counts among the facts', () => {
    const { facts } = profile;
    for (const [id, answer] of Object.entries(effectiveAnswers(visit, knowledge.flow))) {
      if (typeof answer === 'string' && id !== 'now-size' && id !== 'body') expect(facts[id], id).toBe(answer);
      if (Array.isArray(answer)) expect([...((facts[id] ?? []) as string[])].sort(), id).toEqual([...answer].sort());
    }
  });

  it('comes to the outcome and the hold that a fitter would expect', () => {
    expect([profile.outcome, profile.hold]).toEqual([expected.outcome, expected.hold]);
    expect(profile.otherFootwear).toBe(expected.otherFootwear);
    expect(shortlist.outcome).toBe(expected.outcome);
    expect(shortlist.lineUps.length > 0).toBe(expected.outcome === 'shortlist');
  });

  it('is warned of what applies, and not of what does not', () => {
    const codes = profile.cautions.map(({ code }) => code);
    expect(codes).toEqual(expect.arrayContaining(expected.cautions));
    expect(codes.filter((code) => expected.notCautions.includes(code))).toEqual([]);
    expect(profile.advice.map(({ code }) => code)).toEqual(expect.arrayContaining(expected.advice ?? []));
  });

  it('must have what the place, the purse and the customer demand', () => {
    const musts = profile.musts.map(({ attribute, value }) => `${attribute}=${value}`);
    expect(musts).toEqual(expect.arrayContaining(expected.musts));
  });
});

describe.each(using(({ expected }) => expected.needs))('the needs of %s', (_, { expected, line }) => {
  it.each(expected.needs.map((each) => [each.attribute, each] as const))(
    'lie where a fitter looks: %s',
    (key, said) => {
      const need = line.profile.needs.find(({ attribute }) => attribute === key);
      expect(need, key).toBeDefined();
      const [low, high] = need?.ideal ?? [Number.NaN, Number.NaN];
      if (said.touches) expect(low <= said.touches[1] && high >= said.touches[0], `${low} to ${high}`).toBe(true);
      if (said.upTo !== undefined) expect(high).toBeLessThanOrEqual(said.upTo);
      if (said.from !== undefined) expect(low).toBeGreaterThanOrEqual(said.from);
    },
  );
});

describe.each(using(({ expected }) => expected.first))('the first pair for %s', (_, { expected, line }) => {
  it.each(expected.first.map((each) => [each.line, each] as const))('is one a fitter would fetch: %s', (part, said) => {
    const first = line.shortlist.lineUps.find((lineUp) => lineUp.for === part)?.entries[0];
    if (!first) throw new Error(`No pair for ${part}`);
    if (said.use) expect(first.shoe.use).toContain(said.use);
    expect(
      (said.notUse ?? []).filter((use) => first.shoe.use.includes(use)),
      first.shoe.id,
    ).toEqual([]);
    if (said.shoes) expect(said.shoes).toContain(first.shoe.id);
    const because: readonly string[] = first.reasons.map(({ attribute }) => attribute ?? '');
    if (said.because)
      expect(
        said.because.filter((each) => because.includes(each)),
        `${because}`,
      ).not.toEqual([]);
    const misgivings = first.misgivings.map(({ attribute }) => attribute ?? '');
    expect(misgivings).toEqual(expect.arrayContaining(said.misgiving ?? []));
  });
});

describe('the visitors whose size is told', () => {
  it.each(byName.filter(([, { expected }]) => expected.size))('%s gets it in millimetres', (_, { expected, line }) => {
    expect(line.profile.size).toMatchObject(expected.size ?? {});
  });
});

describe('the visitors together', () => {
  it('meet every outcome', () => {
    expect(new Set(told.map(({ line }) => line.profile.outcome)).size).toBe(5);
  });

  it('meet every hold', () => {
    expect(new Set(told.map(({ line }) => line.profile.hold)).size).toBe(HOLDS.length);
  });
});
