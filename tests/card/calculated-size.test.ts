import { describe, expect, it } from 'vitest';
import { calculatedSizes, labelBeside, labelsDiffer, noneBears } from '../../src/card/calculated-size.ts';
import type { CardBox, CardLineUp } from '../../src/card/card.ts';
import { textOf } from '../../src/card/text/text-of.ts';
import { formulaLabels } from '../../src/sizing/formula-labels.ts';
import { copyFor, sampleFacts, sampleLine, sampleWords, storyNames } from './sample-lines.ts';
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

  it('is said at its pair from a whole size on, which way it differs', () => {
    const beside = (label: string) => labelBeside({ labels: [{ system: 'eu', label }], place: 'A1' }, own);
    expect(['40.5', '41', '41.5', '42', '42.5', '43'].map(beside)).toEqual([
      'smaller',
      'smaller',
      undefined,
      undefined,
      undefined,
      'larger',
    ]);
    expect(labelBeside({ labels: [{ system: 'uk', label: '8.5' }], place: 'A1' }, own)).toBeUndefined();
  });

  it('says at the pair that it is as long inside, or to measure first where that is a guess', () => {
    const told = storyNames.flatMap((story) => {
      const facts = sampleFacts(story, copyFor('a5'));
      const texts = textOf(facts, sampleWords('en')).lineUps.flatMap(({ pairs }) => pairs);
      const fits = sampleLine(story).shortlist.lineUps.flatMap(({ entries }) => entries.map(({ boxes: [fit] }) => fit));
      return facts.lineUps
        .flatMap(({ pairs }) => pairs)
        .flatMap(({ labelBeside: way }, at) => (way ? [{ way, fit: fits[at], notes: texts[at]?.notes ?? [] }] : []));
    });
    const says = {
      smaller: 'a smaller number than yours',
      larger: 'a bigger number than yours',
      'smaller-unsure': 'smaller number: measure first',
      'larger-unsure': 'bigger number: measure first',
    } as const;
    expect(new Set(told.map(({ way }) => way))).toEqual(new Set(Object.keys(says)));
    for (const { way, fit, notes } of told) {
      expect(notes[0]).toContain(says[way]);
      // Whether it fits is a guess until somebody measures, or it is known, and then by more than the label.
      if (way.endsWith('-unsure')) expect(fit?.fits).toBe('maybe');
      else expect([fit?.fits, fit?.by === 'formula']).toEqual(['yes', false]);
    }
  });
});

describe('a calculated size that no box of a model bears', () => {
  const own = { system: 'eu', label: '42' } as const;
  const boxes = (...labels: readonly string[]) => labels.map((eu) => ({ labels: { eu } }));

  it('is missed where the boxes are of other sizes, and not where one is, however its size is written', () => {
    expect(noneBears(boxes('41', '43'), own)).toBe(true);
    expect(noneBears(boxes('41', '42', '43'), own)).toBe(false);
    expect(noneBears(boxes('41 1/3', '42 1/3'), own)).toBe(false);
  });

  it('is not spoken of where nothing on the boxes is of its system', () => {
    expect(noneBears([{ labels: { uk: '8' } }], own)).toBe(false);
    expect(noneBears([], own)).toBe(false);
  });
});
