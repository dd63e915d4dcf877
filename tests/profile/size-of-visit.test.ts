import { describe, expect, it } from 'vitest';
import { sizeOfVisit } from '../../src/profile/size-of-visit.ts';

describe('the size of somebody whose pair became too short', () => {
  const child = { 'age-band': '6-to-10', shelf: 'junior', 'now-size': { value: 33, unit: 'eu' } } as const;
  const footOf = (more: Readonly<Record<string, string | readonly string[]>>) =>
    sizeOfVisit({ ...child, ...more }, {}, undefined).footLength ?? Number.NaN;

  it('does not go by the printed size, even if they call it just right', () => {
    const right = footOf({ 'now-feel': 'right' });
    expect(footOf({ 'now-feel': 'right', reason: 'outgrown' })).toBeGreaterThan(right);
    expect(footOf({ reason: 'outgrown' })).toBeGreaterThan(right);
    expect(footOf({ 'now-feel': 'not-sure', 'now-troubles': ['too-short'] })).toBeGreaterThan(right);
    expect(footOf({ 'now-feel': 'right', 'now-troubles': ['rubs-heel'] })).toBe(right);
  });
  it('goes by what they said of its length where that is clearer', () => {
    expect(footOf({ 'now-feel': 'too-short', reason: 'outgrown' })).toBe(footOf({ 'now-feel': 'too-short' }));
    expect(footOf({ 'now-feel': 'a-bit-long', reason: 'outgrown' })).toBe(footOf({ 'now-feel': 'a-bit-long' }));
  });
});
