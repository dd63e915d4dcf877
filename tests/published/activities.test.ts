import { describe, expect, it } from 'vitest';
import { MAIN } from '../profile/main-knowledge.ts';

const rowOf = (id: string) => {
  const row = MAIN.activities.find((each) => each.id === id);
  if (!row) throw new Error(`No activity ${id}`);
  return row;
};

/**
 * Ainsworth BE et al. 2011, Compendium of Physical Activities: code, metabolic equivalent and what it stands for, as read
 * in a public transcription.
 */
const COMPENDIUM: readonly (readonly [code: string, met: number, what: string])[] = [
  ['12030', 8.3, 'running 8 km/h'],
  ['12050', 9.8, 'running 9.7 km/h'],
  ['12070', 11.0, 'running 11.3 km/h'],
  ['12140', 9.0, 'running, cross country'],
  ['15055', 6.5, 'basketball, general'],
  ['15675', 7.3, 'tennis, general'],
  ['15685', 4.5, 'tennis, doubles'],
  ['15030', 5.5, 'badminton, social'],
  ['15652', 7.3, 'squash, general'],
  ['15710', 4.0, 'volleyball'],
  ['17190', 3.5, 'walking 4.5 to 5.1 km/h'],
  ['17200', 4.3, 'walking 5.6 km/h, brisk'],
  ['17080', 6.0, 'hiking, cross country'],
  ['17012', 7.8, 'backpacking'],
  ['15551', 11.8, 'skipping rope, 100 to 120 a minute'],
  ['03015', 7.3, 'aerobic dance, general'],
  ['03020', 5.0, 'aerobic dance, low impact'],
  ['02050', 6.0, 'lifting, vigorous'],
  ['02040', 8.0, 'circuit, vigorous'],
  ['15330', 8.0, 'team handball'],
  ['15610', 7.0, 'football on grass, casual'],
  ['11600', 3.0, 'standing work, light'],
  ['11610', 3.0, 'standing work, light to moderate'],
  ['11620', 3.5, 'standing work with lifting now and then'],
];

describe('metabolic equivalents, against the 2011 Compendium', () => {
  it.each(COMPENDIUM)('code %s is %d: %s', (code, met) => {
    const rows = MAIN.activities.filter((row) => row.met?.code === code);
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) expect(row.met?.value, row.id).toBe(met);
  });

  it('one code has one figure, whichever activity borrows it', () => {
    const figures = new Map<string, Set<number>>();
    for (const { met } of MAIN.activities) {
      if (met?.code) figures.set(met.code, (figures.get(met.code) ?? new Set()).add(met.value));
    }
    expect([...figures].filter(([, values]) => values.size > 1)).toEqual([]);
  });

  it('every figure is in this table', () => {
    const known = COMPENDIUM.map(([code]) => code);
    const codes = MAIN.activities.flatMap(({ met }) => (met?.code ? [met.code] : []));
    expect(codes.filter((code) => !known.includes(code))).toEqual([]);
  });
});

describe('peak vertical forces in body weights', () => {
  it('walking about 1.2 and running up to about 2.5 (Keller et al. 1996, Clin Biomech 11:253)', () => {
    expect(rowOf('everyday-walking').loads.impact?.measured).toEqual({ value: 1.2, unit: 'body-weights' });
    expect(rowOf('road-running').loads.impact?.measured).toEqual({ value: 2.5, unit: 'body-weights' });
  });

  it('6.2 on one foot after a dunk (Wulf, eight men, a thesis: weak)', () => {
    const { impact } = rowOf('basketball').loads;
    expect(impact).toMatchObject({ measured: { value: 6.2, unit: 'body-weights' }, grade: 'weak' });
  });

  it('none for skipping rope: no clean figure was published, only that it is much like running', () => {
    const rope = rowOf('rope-skipping').loads.impact;
    expect(rope?.measured).toBeUndefined();
    expect(rope?.value).toBe(rowOf('road-running').loads.impact?.value);
  });

  it('order the loads: walking below running, running below landing from a jump', () => {
    const impact = (id: string) => rowOf(id).loads.impact?.value ?? 0;
    expect(impact('everyday-walking')).toBeLessThan(impact('road-running'));
    expect(impact('road-running')).toBeLessThan(impact('basketball'));
  });
});
