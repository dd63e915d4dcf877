import { describe, expect, it } from 'vitest';
import { attribute } from '../../src/attributes/table.ts';
import { type Backing, type Grade, LOADS } from '../../src/flow/knowledge.ts';
import { MUST_ATTRIBUTES } from '../../src/shortlist/musts.ts';
import { MAIN } from '../profile/main-knowledge.ts';

/** From what binds most to what binds least, as the caps on weights run. */
const STRENGTH: readonly Grade[] = ['strong', 'moderate', 'common-practice', 'weak', 'contested'];
const COMMON = 'common-practice';

type Named = Backing & { readonly name: string };
const claims: readonly Named[] = [
  ...MAIN.rules.map((row) => ({ ...row, name: `rule ${row.id}` })),
  ...MAIN.cautions.map((row) => ({ ...row, name: `caution ${row.id}` })),
  ...MAIN.advice.map((row) => ({ ...row, name: `advice ${row.id}` })),
  ...MAIN.shoeKinds.map((row) => ({ ...row, name: `shoe kind ${row.id}` })),
  ...MAIN.floors.flatMap((row) =>
    [row.hardness, row.grip, row.lugs, row.roughness].map((value) => ({ ...value, name: `floor ${row.id}` })),
  ),
  ...MAIN.activities.flatMap((row) => [
    ...Object.values(row.loads).map((value) => ({ ...value, name: `load of ${row.id}` })),
    { ...row.toeRoom, name: `toe room of ${row.id}` },
    ...(row.met ? [{ ...row.met, name: `metabolic equivalent of ${row.id}` }] : []),
  ]),
];
const sources = new Map(MAIN.sources.map((source) => [source.id, source]));

describe('whatever the kiosk says', () => {
  it('has a source, or says that it is common practice', () => {
    const loose = claims.filter(({ source }) => source !== COMMON && !sources.has(source));
    expect(loose.map(({ name, source }) => `${name}: ${source}`)).toEqual([]);
  });

  it('is graded no better than its source', () => {
    const sharpened = claims.filter(({ source, grade }) => {
      const best = sources.get(source)?.grade;
      return best !== undefined && STRENGTH.indexOf(grade) < STRENGTH.indexOf(best);
    });
    expect(sharpened.map(({ name }) => name)).toEqual([]);
  });

  it('is graded common practice, weak or contested where nobody has published', () => {
    const unpublished = claims.filter(({ source }) => source === COMMON);
    expect(unpublished.filter(({ grade }) => grade === 'strong' || grade === 'moderate')).toEqual([]);
  });

  it('is called read only where its source was read', () => {
    const unread = claims.filter(({ source, known }) => known === 'read' && sources.get(source)?.known !== 'read');
    expect(unread.map(({ name }) => name)).toEqual([]);
  });

  it('puts nothing known from memory alone before a customer', () => {
    const said = [...MAIN.cautions, ...MAIN.advice].filter(({ fitterOnly }) => !fitterOnly);
    const remembered = said.filter(
      ({ known, source }) => known === 'memory' || sources.get(source)?.known === 'memory',
    );
    expect(remembered).toEqual([]);
    expect(MAIN.rules.filter(({ known }) => known === 'memory')).toEqual([]);
  });
});

describe('the tables', () => {
  it.each([
    ['rules', MAIN.rules],
    ['cautions', MAIN.cautions],
    ['advice', MAIN.advice],
    ['activities', MAIN.activities],
    ['floors', MAIN.floors],
    ['kinds of shoe', MAIN.shoeKinds],
    ['sources', MAIN.sources],
  ] as const)('give every id of the %s once', (_, rows) => {
    const ids = rows.map(({ id }) => id);
    expect(ids.filter((id, i) => ids.indexOf(id) < i)).toEqual([]);
  });

  it('know at least thirty activities, sixteen floors and every load of each activity', () => {
    expect(MAIN.activities.length).toBeGreaterThanOrEqual(30);
    expect(MAIN.floors.length).toBeGreaterThanOrEqual(16);
    for (const { loads } of MAIN.activities) expect(Object.keys(loads).sort()).toEqual([...LOADS].sort());
  });

  it('send an activity to floors that exist', () => {
    const known = new Set(MAIN.floors.map(({ id }) => id));
    expect(MAIN.activities.flatMap(({ floors }) => floors.filter((floor) => !known.has(floor)))).toEqual([]);
  });

  it('give more impact to an activity with more measured body weights', () => {
    const impacts = MAIN.activities.map(({ loads }) => loads.impact).filter(({ measured }) => measured !== undefined);
    const inOrder = [...impacts].sort((a, b) => (a.measured?.value ?? 0) - (b.measured?.value ?? 0));
    const values = inOrder.map(({ value }) => value);
    expect(values.length).toBeGreaterThanOrEqual(3);
    expect([...values].sort((a, b) => a - b)).toEqual(values);
  });

  it('print no multiple of body weight for rope skipping, since none was read', () => {
    const rope = MAIN.activities.find(({ id }) => id === 'rope-skipping');
    expect(Object.values(rope?.loads ?? {}).some(({ measured }) => measured !== undefined)).toBe(false);
  });

  it('name the activity that a borrowed metabolic equivalent comes from', () => {
    const netball = MAIN.activities.find(({ id }) => id === 'netball')?.met;
    expect(netball?.proxy).toBe('basketball, general');
    expect(netball?.grade).toBe('weak');
  });

  it('give usual figures of a kind of shoe that hang together within 2 mm', () => {
    const middle = (range: readonly [number, number] | undefined) => (range ? (range[0] + range[1]) / 2 : Number.NaN);
    for (const { id, usual } of MAIN.shoeKinds) {
      const apart = middle(usual['heel-stack']) - middle(usual['forefoot-stack']) - middle(usual.drop);
      expect(Math.abs(apart), id).toBeLessThanOrEqual(2);
    }
  });
});

describe('a rule', () => {
  it('asks for one thing at a time, inside its own limits and inside the scale', () => {
    for (const { id, asks = [] } of MAIN.rules) {
      for (const { attribute: key, ideal, limits, shift } of asks) {
        expect((ideal === undefined) !== (shift === undefined), id).toBe(true);
        if (!ideal) continue;
        const { accepted } = attribute(key);
        expect(ideal[0], id).toBeGreaterThanOrEqual(accepted[0]);
        expect(ideal[1], id).toBeLessThanOrEqual(accepted[1]);
        expect(ideal[0], id).toBeLessThan(ideal[1]);
        if (limits) expect(limits[0] < ideal[0] && limits[1] > ideal[1], `${id} ${key}`).toBe(true);
      }
    }
  });

  it('makes a must only of what a shoe can be held to, and never from weak or contested evidence', () => {
    for (const { id, musts = [], grade } of MAIN.rules) {
      for (const { attribute: key } of musts) expect(MUST_ATTRIBUTES, id).toContain(key);
      if (musts.length > 0) expect(['weak', 'contested'], id).not.toContain(grade);
    }
  });

  it('weighs most, after the cap of its grade, where the evidence is better', () => {
    const heaviest = (grade: Grade) =>
      Math.max(
        ...MAIN.rules
          .filter((rule) => rule.grade === grade && rule.basis !== 'liking')
          .flatMap(({ asks = [] }) => asks.map(({ weight }) => weight)),
      );
    expect(heaviest('contested')).toBeLessThanOrEqual(0.6);
    expect(heaviest('weak')).toBeLessThanOrEqual(0.8);
    expect(heaviest('moderate')).toBeLessThanOrEqual(1);
  });

  it('is never about knee, hip or lower back and a property of a shoe', () => {
    const regions = ['knee', 'hip', 'lower-back'];
    const touching = MAIN.rules.filter(({ when }) =>
      regions.some((region) => JSON.stringify(when ?? '').includes(`"${region}`)),
    );
    expect(touching.map(({ id }) => id)).toContain('body-joints');
    expect(touching.filter(({ asks, musts }) => asks || musts)).toEqual([]);
  });

  it('never decides from roll alone', () => {
    const about = MAIN.rules.filter(({ when }) => JSON.stringify(when ?? '').includes('"roll-'));
    const deciding = about.filter(({ asks, musts, outcome }) => asks || musts || outcome);
    expect(deciding.map(({ id }) => id)).toEqual(['roll-with-history']);
    for (const needed of ['roll-in', 'past-pairs', 'liking-arch']) {
      expect(JSON.stringify(deciding[0]?.when)).toContain(`"${needed}"`);
    }
  });
});

/** Read and kept for the source page and for other parts of the kiosk; no rule, caution or row rests on them. */
const BACKGROUND = [
  'assessor-agreement-2012',
  'bishop-2020',
  'bracing-review-2018',
  'compendium-2024',
  'cook-1985',
  'esculier-2015',
  'fit-points-1995',
  'fuller-2017',
  'heel-mileage-2010',
  'herring-1993',
  'infantry-comfort-2021',
  'iso-9407',
  'mills-2010',
  'neal-2014',
  'nice-diabetic-foot',
  'nielsen-2014',
  'nigg-2015',
  'redmond-2006',
  'relph-2022',
  'ridge-2013',
  'theisen-2014',
  'wang-2012',
  'warne-2017',
  'willems-2021',
];

it('every source is cited by something, or listed as background', () => {
  const cited = new Set(claims.map(({ source }) => source));
  const uncited = MAIN.sources.map(({ id }) => id).filter((id) => !cited.has(id));
  expect(uncited.sort()).toEqual(BACKGROUND);
});

it('the full set of care cautions is on every card: both feet, easing in, no promise, no brace', () => {
  const always = MAIN.cautions.filter((row) => row.always);
  expect(always.map(({ id }) => id)).toEqual(
    expect.arrayContaining(['care-both-feet', 'care-ease-in', 'care-look-again', 'care-alternate', 'care-lacing']),
  );
  expect(always.map(({ id }) => id)).toEqual(
    expect.arrayContaining(['care-dry', 'care-retire', 'care-no-proof', 'care-collar', 'care-stop']),
  );
  expect(always.filter(({ level, health, fitterOnly }) => level !== 'upkeep' || health || fitterOnly)).toEqual([]);
});
