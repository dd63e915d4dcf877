import { describe, expect, test } from 'vitest';
import deWords from '../../flows/words/de/attributes.json';
import enWords from '../../flows/words/en/attributes.json';
import { anchorOf } from '../../src/attributes/anchor.ts';
import { LIST_ATTRIBUTES, MARK_ATTRIBUTES, NUMBER_ATTRIBUTES } from '../../src/attributes/attributes.ts';
import { sayValue } from '../../src/attributes/say-value.ts';
import { ATTRIBUTES, attribute, findAttribute, SUBSTITUTE_DESIRABILITY } from '../../src/attributes/table.ts';
import { wordsOf } from '../../src/words/words-of.ts';

const languages = { en: wordsOf('en', [enWords]), de: wordsOf('de', [deWords]) };

describe('the one table of shoe properties', () => {
  test('has a row for every property, once', () => {
    const keys = ATTRIBUTES.map((row) => row.key);
    expect(new Set(keys)).toEqual(new Set([...NUMBER_ATTRIBUTES, ...MARK_ATTRIBUTES, ...LIST_ATTRIBUTES]));
    expect(keys).toHaveLength(new Set(keys).size);
  });

  test('gives examples that hold', () => {
    expect(attribute('drop').unit).toBe('mm');
    expect(attribute('cushion').anchors).toEqual(['very-firm', 'firm', 'medium', 'soft', 'very-soft']);
    expect(attribute('closure').open).toBe(false);
    expect(anchorOf('cushion', 4)).toBe('soft');
    expect(anchorOf('medial-support', 0)).toBe('none');
    expect(anchorOf('drop', 8)).toBeUndefined();
    expect(sayValue(languages.en, 'mass', 270, 'EUR')).toBe('270 g');
    expect(sayValue(languages.en, 'cushion', 4, 'EUR')).toBe('soft');
    expect(sayValue(languages.en, 'price', 120, 'EUR')).toBe('€120');
  });

  test('knows no property that is not in it', () => {
    expect(findAttribute('bounciness')).toBeUndefined();
    expect(findAttribute('mass')).toBe(attribute('mass'));
  });

  test('names its source on every row', () => {
    for (const row of ATTRIBUTES) expect(row.source, row.key).not.toBe('');
  });

  test('draws on a scale inside what it accepts, in steps smaller than the scale', () => {
    for (const row of ATTRIBUTES) {
      if (row.kind !== 'number' && row.kind !== 'ordinal') continue;
      const [from, to] = row.range;
      expect(from, row.key).toBeLessThan(to);
      expect(row.accepted[0], row.key).toBeLessThanOrEqual(from);
      expect(row.accepted[1], row.key).toBeGreaterThanOrEqual(to);
      expect(row.step, row.key).toBeGreaterThan(0);
      expect(row.step, row.key).toBeLessThanOrEqual(to - from);
    }
  });

  test('has one anchored word for each step of a scale judged by hand', () => {
    const scales = { cushion: 5, rebound: 5, bend: 5, twist: 5, 'heel-counter': 5, 'medial-support': 3 } as const;
    for (const [key, steps] of Object.entries(scales)) {
      const { range, anchors } = attribute(key as keyof typeof scales);
      expect(anchors, key).toHaveLength(steps);
      expect(range[1] - range[0] + 1, key).toBe(steps);
    }
    // The ordinals that start at "none" start at 0.
    expect(attribute('medial-support').range).toEqual([0, 2]);
    expect(attribute('rocker').range).toEqual([0, 2]);
    expect(attribute('toe-box-shape').anchors).toEqual(['pointed', 'round', 'square']);
    expect(attribute('collar-height').anchors).toEqual(['low', 'mid', 'high']);
  });

  test('puts a value between two anchored words to the nearer, and one beyond the scale to its end', () => {
    expect(anchorOf('cushion', 2.4)).toBe('firm');
    expect(anchorOf('cushion', 2.5)).toBe('medium');
    expect(anchorOf('cushion', 9)).toBe('very-soft');
    expect(anchorOf('rocker', -1)).toBe('none');
  });

  test('neither rewards nor ruins a shoe for a figure nobody recorded', () => {
    // Mean of a straight-line desirability over its range: 0.5 (R package `desirability`, Kuhn).
    const points = Array.from({ length: 101 }, (_, at) => at / 100);
    expect(points.reduce((sum, d) => sum + d, 0) / points.length).toBeCloseTo(SUBSTITUTE_DESIRABILITY, 10);
  });

  test.each(Object.entries(languages))('has all its words in %s', (_, words) => {
    for (const row of ATTRIBUTES) {
      for (const part of ['name', 'how']) expect(words.say(`attribute.${row.key}.${part}`)).not.toBe('');
      if (row.kind === 'list') {
        for (const { id } of row.items) expect(words.say(`attribute.${row.key}.item.${id}`)).not.toBe('');
      } else if (row.kind !== 'mark') {
        for (const end of ['low', 'high']) expect(words.say(`attribute.${row.key}.${end}`)).not.toBe('');
        const said = (row.anchors ?? []).map((id) => words.say(`attribute.${row.key}.step.${id}`));
        expect(new Set(said).size, row.key).toBe(said.length);
      }
    }
  });
});
