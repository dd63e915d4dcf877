import { describe, expect, it } from 'vitest';
import { listText } from '../../src/units/list-text.ts';

describe('several things said as one', () => {
  it('listText: are joined as the language joins them', () => {
    expect(listText(['A', 'B', 'C'], 'de')).toBe('A, B und C');
    expect(listText(['A', 'B'], 'ar', 'and')).toBe('A وB');
    expect(listText(['hall', 'mat'], 'en', 'or')).toBe('hall or mat');
  });

  it('are one thing where there is one, and nothing where there is none', () => {
    expect(listText(['A'], 'fr', 'and')).toBe('A');
    expect(listText([], 'fr')).toBe('');
  });

  it('have no Latin comma in Arabic', () => {
    for (const kind of ['brief', 'and', 'or'] as const)
      expect(listText(['A', 'B', 'C'], 'ar', kind)).not.toContain(',');
  });
});
