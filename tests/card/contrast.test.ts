import { describe, expect, it } from 'vitest';
import { PAINTS, paintOf } from '../../src/card/paint.ts';

/** Relative luminance and contrast: WCAG 2.2, glossary. */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
const contrast = (a: string, b: string): number => {
  const [light = 0, dark = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (light + 0.05) / (dark + 0.05);
};

describe('colours on a card', () => {
  it('the formula gives 21 for black on white and 1 for a colour on itself', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21);
    expect(contrast(PAINTS.tag, PAINTS.tag)).toBe(1);
  });

  it.each([
    ['ink', 'paper'],
    ['ink', 'tag'],
    ['ink', 'band'],
    ['soft', 'paper'],
    ['soft', 'tag'],
    ['paper', 'ink'],
  ] as const)('text in %s on %s has 4.5 to 1 or more (WCAG 1.4.3)', (text, ground) => {
    expect(contrast(PAINTS[text], PAINTS[ground])).toBeGreaterThanOrEqual(4.5);
  });

  it.each([
    ['ink', 'band'],
    ['thread', 'paper'],
    ['thread', 'tag'],
  ] as const)('a mark in %s on %s has 3 to 1 or more (WCAG 1.4.11)', (mark, ground) => {
    expect(contrast(PAINTS[mark], PAINTS[ground])).toBeGreaterThanOrEqual(3);
  });

  it('black-only paper gets black on bare paper', () => {
    expect(paintOf('thread', 'black')).toBe('#000000');
    expect(paintOf('tag', 'black')).toBeUndefined();
  });
});
