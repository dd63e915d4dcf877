import { describe, expect, it } from 'vitest';
import type { CardFacts } from '../../src/card/card.ts';
import { layoutCard } from '../../src/card/layout/layout-card.ts';
import { textOf } from '../../src/card/text/text-of.ts';
import { loadKnowledge } from '../../src/command-line/load.ts';
import { CAUTION_LEVELS } from '../../src/flow/knowledge.ts';
import { misplaced } from './on-paper.ts';
import { SAMPLE_FORMATS, sampleFacts, sampleWords } from './sample-lines.ts';
import { measure, toyTemplate } from './toy-card.ts';

/** Every caution there is on one card, more than any visit raises, most urgent first. */
const cautions = [...loadKnowledge().cautions]
  .sort((one, other) => CAUTION_LEVELS.indexOf(one.level) - CAUTION_LEVELS.indexOf(other.level))
  .map(({ id, level }) => ({ code: id, level }));
const everything: CardFacts = { ...sampleFacts('runner-tall-soft-to-flat', 'customer'), cautions };

/** A word parted at the end of a line is one word. */
const plain = (text: string) => text.replaceAll(/[\s\u00ad-]/g, '');
const textsOf = (facts: CardFacts, format: string, language: string) => {
  const { pages } = layoutCard(textOf(facts, sampleWords(language)), toyTemplate(format), measure);
  const texts = pages.flatMap((page) => page.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])));
  return { pages, said: plain(texts.join(' ')) };
};

describe.each(SAMPLE_FORMATS)('a card printed as %s', (format) => {
  it.each(['en', 'de', 'fr', 'es'])('with every caution there is prints them all, in %s', (language) => {
    const { pages, said } = textsOf(everything, format, language);
    expect(pages.flatMap((page) => misplaced(page, toyTemplate(format)))).toEqual([]);
    const words = sampleWords(language);
    expect(cautions.filter(({ code }) => !said.includes(plain(words.say(`caution.${code}.text`))))).toEqual([]);
  });

  it('with model names of 200 letters lays nothing over anything', () => {
    const named: CardFacts = {
      ...everything,
      lineUps: everything.lineUps.map((lineUp) => ({
        ...lineUp,
        pairs: lineUp.pairs.map((pair) => ({ ...pair, name: 'Longname'.repeat(25) })),
      })),
    };
    const { pages } = textsOf(named, format, 'en');
    expect(pages.flatMap((page) => misplaced(page, toyTemplate(format)))).toEqual([]);
  });
});
