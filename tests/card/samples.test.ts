import { describe, expect, it } from 'vitest';
import { layoutCard, type Sheets } from '../../src/card/layout/layout-card.ts';
import { textOf } from '../../src/card/text/text-of.ts';
import { twinOf } from '../../src/card/twin.ts';
import { loadKnowledge } from '../../src/command-line/load.ts';
import { picturesOnDisk } from '../../src/command-line/pictures-on-disk.ts';
import { misplaced } from './on-paper.ts';
import { copyFor, sampleFacts, sampleLine, sampleWords, storyNames } from './sample-lines.ts';
import { measure, toyTemplate } from './toy-card.ts';

/**
 * Every story's card as it would be printed. A5 in both languages, since it is the tightest, and the fitter's A4 and the
 * roll; the long run in `tests/soak` takes every format in every language.
 */
const RUNS = [
  { format: 'a5', language: 'en' },
  { format: 'a5', language: 'de' },
  { format: 'a4', language: 'en' },
  { format: 'roll80', language: 'de' },
] as const;

const pictures = picturesOnDisk();
const knowledge = loadKnowledge();
const lay = (story: string, format: string, language: string): Sheets =>
  layoutCard(
    textOf(sampleFacts(story, copyFor(format)), sampleWords(language), pictures),
    toyTemplate(format),
    measure,
  );
const isSplit = (story: string): boolean => sampleLine(story).shortlist.lineUps.length > 1;

describe.each(storyNames)('the card of %s', (story) => {
  const cards = new Map<string, Sheets>();
  const card = (format: string, language: string): Sheets => {
    const known = cards.get(format + language) ?? lay(story, format, language);
    cards.set(format + language, known);
    return known;
  };

  it('keeps inside the margins of every page, and lays no words over others', () => {
    for (const { format, language } of RUNS) {
      const { pages } = card(format, language);
      expect(
        pages.flatMap((page) => misplaced(page, toyTemplate(format))),
        `${format} ${language}`,
      ).toEqual([]);
    }
  });

  it('prints every caution whole, and no page without words', () => {
    for (const { format, language } of RUNS) {
      const text = textOf(sampleFacts(story, copyFor(format)), sampleWords(language));
      const said = card(format, language)
        .pages.map((page) => page.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])))
        .map((texts) => {
          expect(texts.length).toBeGreaterThan(3);
          return texts.join(' ');
        })
        .join(' ')
        // A word parted at the end of a line is one word.
        .replaceAll('- ', '');
      const wanted = [...text.cautions.flatMap((group) => group.items.map((item) => item.text)), ...text.care.items];
      const cut = wanted.filter((words) => !said.includes(words.replaceAll('\u00ad', '').replaceAll('- ', '')));
      expect(cut, `${format} ${language}`).toEqual([]);
    }
  });

  it('fits on two sides of A5, two pages of a fitter’s A4, and 70 cm of roll, unless it holds two line-ups', () => {
    const more = isSplit(story) ? 1 : 0;
    expect(card('a5', 'en').pages.length).toBeLessThanOrEqual(2 + more);
    expect(card('a5', 'de').pages.length).toBeLessThanOrEqual(2 + more);
    expect(card('a4', 'en').pages.length).toBeLessThanOrEqual(2 + more);
    expect(card('roll80', 'de').pages[0]?.height).toBeLessThan(700 + 300 * more);
  });
});

describe('a card in Arabic', () => {
  it('has no Latin comma or question mark between Arabic words, in any story', () => {
    for (const story of storyNames) {
      const page = twinOf(textOf(sampleFacts(story, 'fitter'), sampleWords('ar'), pictures)).replaceAll(/<[^>]+>/g, '');
      expect(page.match(/[\u0600-\u06ff]\s?[,;?].{0,20}/g) ?? [], story).toEqual([]);
    }
  });
});

describe('what is for the fitter alone', () => {
  const theirs = new Set(
    [...knowledge.cautions, ...knowledge.advice].filter((row) => row.fitterOnly).map((row) => row.id),
  );
  const saying = (copy: 'customer' | 'fitter') =>
    storyNames.flatMap((story) => {
      const { cautions, advice } = sampleFacts(story, copy);
      return [...cautions, ...advice].map((each) => each.code).filter((code) => theirs.has(code));
    });

  it('is on a fitter’s copy and on no customer’s', () => {
    expect(theirs.size).toBeGreaterThan(0);
    expect(saying('fitter').length).toBeGreaterThan(0);
    expect(saying('customer')).toEqual([]);
  });
});
