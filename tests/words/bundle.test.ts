import { describe, expect, it } from 'vitest';
import { mergeBundles, sentencesOf } from '../../src/words/bundle.ts';

describe('word files laid over each other', () => {
  it('mergeBundles: keep the keys of both', () => {
    expect(mergeBundles([{ unit: { mm: 'mm' } }, { unit: { cm: 'cm' } }])).toEqual({ unit: { mm: 'mm', cm: 'cm' } });
  });

  it('let the later one be heard, and stay as they were', () => {
    const first = { unit: { mm: 'mm' } };
    expect(mergeBundles([first, { unit: { mm: 'Millimeter' } }])).toEqual({ unit: { mm: 'Millimeter' } });
    expect(first).toEqual({ unit: { mm: 'mm' } });
  });

  it('throw where a sentence meets a group', () => {
    expect(() => mergeBundles([{ unit: 'mm' }, { unit: { cm: 'cm' } }])).toThrow('"unit" is a sentence in one');
    expect(() => mergeBundles([{ unit: { cm: 'cm' } }, { unit: 'mm' }])).toThrow('"unit" is a sentence in one');
  });

  it('are not fooled by a key named like what every object has', () => {
    expect(mergeBundles([{ constructor: { toString: 'yes' } }])).toEqual({ constructor: { toString: 'yes' } });
  });

  it('sentencesOf: give every sentence by its dotted key', () => {
    expect([...sentencesOf({ unit: { mm: 'mm' } })]).toEqual([['unit.mm', 'mm']]);
  });
});
