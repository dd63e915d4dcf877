import { describe, expect, it } from 'vitest';
import type { CardFacts } from '../../src/card/card.ts';
import { layoutCard, type Sheets } from '../../src/card/layout/layout-card.ts';
import { extent, type Mark, type TextMark } from '../../src/card/layout/mark.ts';
import { textOf } from '../../src/card/text/text-of.ts';
import { longFacts, measure, referFacts, toyFacts, toyTemplate, toyWordsOf } from './toy-card.ts';

const FORMATS = ['a5', 'a5-two-up', 'a4', 'letter', 'roll80'];
const noPairs: CardFacts = {
  ...toyFacts,
  lineUps: [{ for: 'all', sureness: 'none', pairs: [], ifDropped: [{ must: 'price', value: 60, pairs: 4 }] }],
};
const CARDS: Readonly<Record<string, CardFacts>> = {
  'three pairs': toyFacts,
  'every caution': longFacts,
  'a clinician first': referFacts,
  'no pairs': noPairs,
};

const lay = (facts: CardFacts, format: string, language: 'en' | 'de' = 'en'): Sheets =>
  layoutCard(textOf(facts, toyWordsOf(language)), toyTemplate(format), measure);
const texts = (sheets: Sheets): readonly TextMark[] =>
  sheets.pages.flatMap((page) => page.marks.filter((mark): mark is TextMark => mark.kind === 'text'));
const said = (sheets: Sheets): string =>
  texts(sheets)
    .map((mark) => mark.text)
    .join(' ');

describe.each(FORMATS)('a card printed as %s', (format) => {
  it.each(Object.keys(CARDS))('with %s keeps inside its margins', (name) => {
    const { margins, sheet } = toyTemplate(format);
    for (const language of ['en', 'de'] as const) {
      for (const each of lay(CARDS[name] ?? toyFacts, format, language).pages) {
        // The line to cut two pages apart stands between them, not on either.
        const onPages = each.marks.filter(
          (mark) => !(sheet && mark.kind === 'line' && mark.ink === 'rule' && mark.stitched),
        );
        for (const mark of onPages) {
          const { left, top, right, bottom } = extent(mark);
          const slack = 0.05;
          expect(left, JSON.stringify(mark)).toBeGreaterThanOrEqual(margins.left - slack);
          expect(right, JSON.stringify(mark)).toBeLessThanOrEqual(each.width - margins.right + slack);
          expect(top, JSON.stringify(mark)).toBeGreaterThanOrEqual(margins.top - slack);
          expect(bottom, JSON.stringify(mark)).toBeLessThanOrEqual(each.height - margins.bottom + slack);
        }
      }
    }
  });

  it.each(Object.keys(CARDS))('with %s prints no line of text over another', (name) => {
    for (const language of ['en', 'de'] as const) {
      for (const page of lay(CARDS[name] ?? toyFacts, format, language).pages) {
        const marks = page.marks.filter((mark): mark is TextMark => mark.kind === 'text');
        expect(overlapping(marks)).toEqual([]);
      }
    }
  });

  it('prints every caution whole, however many there are', () => {
    const many: CardFacts = { ...longFacts, cautions: Array.from({ length: 6 }, () => longFacts.cautions).flat() };
    const words = toyWordsOf('en');
    const all = said(lay(many, format)).replaceAll(/\s+/g, ' ');
    for (const caution of longFacts.cautions) {
      const text = words.say(`caution.${caution.code}.text`);
      expect(all.split(text).length - 1, caution.code).toBe(6);
    }
  });

  it('sets no type under nine points', () => {
    for (const mark of texts(lay(longFacts, format))) expect(mark.size).toBeGreaterThanOrEqual(9);
  });

  it('breaks a model name of 200 letters instead of running off the paper', () => {
    const long = {
      ...toyFacts,
      lineUps: toyFacts.lineUps.map((l) => ({
        ...l,
        pairs: l.pairs.map((p) => ({ ...p, name: 'Longname'.repeat(25) })),
      })),
    };
    const sheets = lay(long, format);
    const letters = texts(sheets)
      .map((mark) => mark.text)
      .join('');
    expect(letters).toContain('Longname');
    for (const page of sheets.pages) {
      for (const mark of page.marks) expect(extent(mark).right).toBeLessThanOrEqual(page.width - 3.9);
    }
  });

  it.each(['Back room, second shelf on the left, behind the sandals', 'W'.repeat(120)])(
    'sets a shelf told in words (%s) in lines beside the size',
    (shelf) => {
      const long = {
        ...toyFacts,
        lineUps: toyFacts.lineUps.map((l) => ({
          ...l,
          pairs: l.pairs.map((p) => ({ ...p, boxes: p.boxes.map((box) => ({ ...box, place: shelf })) })),
        })),
      };
      const sheets = lay(long, format);
      for (const word of shelf.split(' ').filter((part) => part.length < 10)) expect(said(sheets)).toContain(word);
      for (const page of sheets.pages) {
        for (const mark of page.marks) expect(extent(mark).right).toBeLessThanOrEqual(page.width - 3.9);
      }
    },
  );

  it('shows a mark for an emoji in the shop name and lists it', () => {
    const sheets = lay({ ...toyFacts, shop: { ...toyFacts.shop, name: 'Toy 👟🏽 Shop' } }, format);
    expect(sheets.missing).toEqual(['👟🏽']);
    expect(said(sheets)).toContain('Toy ◊ Shop');
  });

  it('has no empty page', () => {
    for (const facts of Object.values(CARDS)) {
      for (const page of lay(facts, format).pages) expect(page.marks.length).toBeGreaterThan(3);
    }
  });
});

describe('the tape measures', () => {
  it('never lay one letter over another, even where all pairs are alike', () => {
    for (const format of FORMATS) {
      for (const page of lay(toyFacts, format).pages) {
        const discs = page.marks.filter((mark) => mark.kind === 'disc');
        for (const [i, a] of discs.entries()) {
          for (const b of discs.slice(i + 1)) {
            expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThanOrEqual(a.r + b.r - 0.01);
          }
        }
      }
    }
  });

  it('say at their end which pairs are not recorded', () => {
    expect(said(lay(toyFacts, 'a4'))).toContain('C not recorded');
  });
});

describe('the roll', () => {
  it('has no line under a quarter of a millimetre and says that it fades', () => {
    const sheets = lay(toyFacts, 'roll80');
    const weights = sheets.pages[0]?.marks.flatMap((mark: Mark) =>
      'weight' in mark && mark.weight ? [mark.weight] : [],
    );
    expect(Math.min(...(weights ?? []))).toBeGreaterThanOrEqual(0.25);
    expect(said(sheets)).toContain('This paper fades');
    expect(said(sheets)).toContain('cut here');
  });

  it('is as long as what it says', () => {
    const height = (facts: CardFacts) => lay(facts, 'roll80').pages[0]?.height ?? 0;
    expect(height(longFacts)).toBeGreaterThan(height(toyFacts));
    expect(lay(longFacts, 'roll80').pages).toHaveLength(1);
  });
});

describe('on A5', () => {
  it('a card with pairs has the fitter’s part on both sides at the same height, so that it tears off whole', () => {
    const [front, back] = lay(toyFacts, 'a5').pages;
    const seam = (page: Sheets['pages'][number] | undefined) =>
      page?.marks.find(
        (mark) => mark.kind === 'line' && mark.stitched && mark.ink === 'thread' && mark.x2 - mark.x1 > 130,
      );
    expect(seam(front)).toEqual(seam(back));
    expect(seam(front)).toBeDefined();
  });

  it('the label and shelf of a box to fetch are set in 14 points or more', () => {
    const labels = texts(lay(toyFacts, 'a5')).filter((mark) => /^(EU 42 2\/3|shelf C4)$/.test(mark.text));
    expect(labels.length).toBeGreaterThanOrEqual(6);
    for (const label of labels) expect(label.size).toBeGreaterThanOrEqual(14);
  });
});

function overlapping(marks: readonly TextMark[]): readonly string[] {
  const found: string[] = [];
  const boxes = marks.map((mark) => ({ mark, ...extent(mark) }));
  for (const [i, a] of boxes.entries()) {
    for (const b of boxes.slice(i + 1)) {
      const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
      const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
      if (across > 0.3 && down > 0.3) found.push(`${a.mark.text} / ${b.mark.text}`);
    }
  }
  return found;
}
