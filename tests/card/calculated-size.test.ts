import { describe, expect, it } from 'vitest';
import { calculatedSizes, labelsDiffer } from '../../src/card/calculated-size.ts';
import type { CardBox, CardLineUp } from '../../src/card/card.ts';
import { formulaLabels } from '../../src/sizing/formula-labels.ts';
import { pairsWith } from './toy-card.ts';

/** A foot of 265 mm: EU 42, UK 8.5, US men's 9.5 (tests/published hold the formulas). */
const labels = formulaLabels(265);
const systems = (first: Parameters<typeof calculatedSizes>[0], shelf: string) =>
  calculatedSizes(first, labels, shelf).map(({ system, label }) => `${system} ${label}`);

describe('the calculated size on a card', () => {
  it('begins with the system the customer gave, and leaves out scales of another shelf', () => {
    expect(systems('uk', 'men')).toEqual(['uk 8.5', 'eu 42', 'us-men 9.5']);
    expect(systems('eu', 'women')).toEqual(['eu 42', 'uk 8.5', 'us-women 10.5']);
    expect(systems('us-men', 'any')).toEqual(['us-men 9.5', 'eu 42', 'uk 8.5', 'us-women 10.5']);
  });

  it('is in children’s scales where the foot is on them', () => {
    const child = calculatedSizes('eu', formulaLabels(180), 'junior').map(({ system }) => system);
    expect(child).toContain('uk-child');
    expect(child).not.toContain('us-women');
  });

  it('is in EU where the customer’s own system has no calculated size', () => {
    expect(systems('cm', 'men')[0]).toBe('eu 42');
  });
});

describe('a box that bears another size than the calculated one', () => {
  const fetch = (label: string, second = '42'): readonly CardLineUp[] => {
    const box = (eu: string): CardBox => ({ labels: [{ system: 'eu', label: eu }], place: 'A1' });
    return pairsWith([box(label), box(second)]);
  };
  const own = { system: 'eu', label: '42' } as const;

  it('is told from half a size on, since whoever reads both would take one for a mistake', () => {
    expect(labelsDiffer(fetch('42'), own)).toBe(false);
    expect(labelsDiffer(fetch('42 1/3'), own)).toBe(false);
    expect(labelsDiffer(fetch('42.5'), own)).toBe(true);
    expect(labelsDiffer(fetch('41'), own)).toBe(true);
  });

  it('is told of the first box alone: the second is there because it differs', () => {
    expect(labelsDiffer(fetch('42', '43'), own)).toBe(false);
  });
});
