import { describe, expect, it } from 'vitest';
import { layoutCard } from '../../src/card/layout/layout-card.ts';
import { extent, type Ink, type Mark } from '../../src/card/layout/mark.ts';
import { PAINTS, paintOf } from '../../src/card/paint.ts';
import { textOf } from '../../src/card/text/text-of.ts';
import { longFacts, measure, referFacts, toyFacts, toyTemplate, toyWordsOf } from './toy-card.ts';

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

  it.each(['a5', 'a5-two-up', 'a4', 'letter', 'roll80'])(
    'on every card printed as %s text has 4.5 to 1 or more (WCAG 1.4.3), marks 3 to 1 (1.4.11)',
    (format) => {
      for (const facts of [toyFacts, longFacts, referFacts]) {
        const sheets = layoutCard(textOf(facts, toyWordsOf('en')), toyTemplate(format), measure);
        const pairs = new Set(sheets.pages.flatMap((page) => inUse(page.marks)));
        expect(pairs.size).toBeGreaterThan(2);
        for (const pair of pairs) {
          const [kind, mark = 'ink', ground = 'paper'] = pair.split(' ') as ['text' | 'mark', Ink, Ink];
          const paint = (ink: Ink) => paintOf(ink, sheets.ink) ?? PAINTS.paper;
          expect(contrast(paint(mark), paint(ground)), pair).toBeGreaterThanOrEqual(kind === 'text' ? 4.5 : 3);
        }
      }
    },
  );

  it('black-only paper gets black on bare paper', () => {
    expect(paintOf('thread', 'black')).toBe('#000000');
    expect(paintOf('tag', 'black')).toBeUndefined();
  });
});

/** Each ink with the ground it stands on, `text soft tag`. */
function inUse(marks: readonly Mark[]): readonly string[] {
  return marks.flatMap((mark, at) => {
    // Hair-fine ticks and rules only help the eye along: what they say is said by band, letters and words.
    const ink = mark.kind === 'text' || mark.kind === 'line' ? mark.ink : 'stroke' in mark ? mark.stroke : undefined;
    if (!ink || ink === 'rule') return [];
    const { left, right, top, bottom } = extent(mark);
    // The edge of a shape is seen against what is around it, words against what is under them.
    const [x, y] = mark.kind === 'text' ? [(left + right) / 2, (top + bottom) / 2] : [left - 0.1, (top + bottom) / 2];
    const under = marks.slice(0, at).findLast((each) => {
      const e = extent(each);
      return 'fill' in each && each.fill && e.left <= x && e.right >= x && e.top <= y && e.bottom >= y;
    });
    return [`${mark.kind === 'text' ? 'text' : 'mark'} ${ink} ${under && 'fill' in under ? under.fill : 'paper'}`];
  });
}
