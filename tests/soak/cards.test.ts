import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { COPIES } from '../../src/card/card.ts';
import { layoutCard } from '../../src/card/layout/layout-card.ts';
import { textOf } from '../../src/card/text/text-of.ts';
import { picturesOnDisk } from '../../src/command-line/pictures-on-disk.ts';
import { misplaced } from '../card/on-paper.ts';
import { SAMPLE_FORMATS, sampleFacts, sampleWords, storyNames } from '../card/sample-lines.ts';
import { measure, toyTemplate } from '../card/toy-card.ts';

const pictures = picturesOnDisk();
const languages = readdirSync('flows/words').filter((language) => sampleWords(language).direction === 'ltr');

/** Every story, copy, format and language that is printed as PDF. */
describe.each(storyNames)('every card of %s', (story) => {
  it('keeps inside its margins and lays no words over others', () => {
    for (const language of languages) {
      for (const copy of COPIES) {
        const text = textOf(sampleFacts(story, copy), sampleWords(language), pictures);
        for (const format of SAMPLE_FORMATS) {
          const { pages, missing } = layoutCard(text, toyTemplate(format), measure);
          const wrong = pages.flatMap((page) => misplaced(page, toyTemplate(format)));
          expect({ wrong, missing }, `${language} ${copy} ${format}`).toEqual({ wrong: [], missing: [] });
        }
      }
    }
  }, 120_000);
});
