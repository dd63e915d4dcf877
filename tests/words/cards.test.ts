import { describe, expect, it } from 'vitest';
import { layoutCard } from '../../src/card/layout/layout-card.ts';
import { textOf } from '../../src/card/text/text-of.ts';
import { misplaced } from '../card/on-paper.ts';
import { copyFor, sampleFacts, sampleLine, sampleWords, storyNames } from '../card/sample-lines.ts';
import { measure, toyTemplate } from '../card/toy-card.ts';
import { LANGUAGES } from './word-files.ts';

/** English and German are laid out with the card's own checks; right to left is printed as a page. */
const others = LANGUAGES.filter((language) => !['en', 'de'].includes(language));
const drawn = others.filter((language) => sampleWords(language).direction === 'ltr');

describe.each(drawn)('the A5 cards of all stories in %s', (language) => {
  const cards = storyNames.map((story) => {
    const template = toyTemplate('a5');
    const sheets = layoutCard(textOf(sampleFacts(story, copyFor('a5')), sampleWords(language)), template, measure);
    return { story, sheets, template };
  });

  it('keep inside their margins, and lay no words over others', () => {
    for (const { story, sheets, template } of cards) {
      expect(
        sheets.pages.flatMap((page) => misplaced(page, template)),
        story,
      ).toEqual([]);
    }
  });

  it('fit on two sides, unless they hold two line-ups', () => {
    const long = cards.filter(
      ({ story, sheets }) => sheets.pages.length > (sampleLine(story).shortlist.lineUps.length > 1 ? 3 : 2),
    );
    expect(long.map(({ story, sheets }) => `${story}: ${sheets.pages.length}`)).toEqual([]);
  });
});

it.each(others)('every story can be said in %s, with nothing left out', (language) => {
  for (const story of storyNames) {
    const said = JSON.stringify(textOf(sampleFacts(story, copyFor('a4')), sampleWords(language)));
    expect(said, story).not.toContain('{{');
  }
});
