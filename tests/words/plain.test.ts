import { fleschKincaid } from 'flesch-kincaid';
import { syllable } from 'syllable';
import { describe, expect, it } from 'vitest';
import { sentencesOf } from '../../src/words/bundle.ts';
import { wordFiles } from './word-files.ts';

/**
 * Flesch–Kincaid grade level (Kincaid, Fishburne, Rogers & Chissom 1975):
 * 0.39 × words per sentence + 11.8 × syllables per word − 15.59. Grade 4 is read by most at nine to ten (United
 * States school years). The formula is kind to short sentences, so no single text may pass a bound of its own either.
 */
const GRADE_TOGETHER = 4;
/**
 * One text alone is too short to grade well (a "maternity unit" has no shorter name); this only catches a sentence that
 * got out of hand. Common practice.
 */
const GRADE_ALONE = 10;

const sentences = new Intl.Segmenter('en', { granularity: 'sentence' });
const words = new Intl.Segmenter('en', { granularity: 'word' });

function grade(texts: readonly string[]): number {
  const count = { sentence: 0, word: 0, syllable: 0 };
  for (const text of texts) {
    for (const { segment } of sentences.segment(text.replace(/\{\{[^}]*\}\}/g, 'two'))) {
      const said = [...words.segment(segment)].filter(({ isWordLike }) => isWordLike);
      if (said.length === 0) continue;
      count.sentence += 1;
      count.word += said.length;
      count.syllable += said.reduce((sum, word) => sum + Math.max(1, syllable(word.segment)), 0);
    }
  }
  return fleschKincaid(count);
}

/** What customers read, by word file and key; the rest is for the fitter and the shop. */
const FOR_CUSTOMERS: readonly (readonly [string, RegExp])[] = [
  ['fitting/words', /^question\..*(ask|why|hint)$/],
  ['fitting/words', /^question\.signs\.option\./],
  ['fitting/knowledge', /^(caution|advice|other-footwear)\..*text$|^task\./],
  ['words/interview', /./],
  ['words/result', /./],
  ['words/shortlist', /^(reason|misgiving|part|sureness|what-if|easeIn)\./],
];
const english = wordFiles('en');
const read = FOR_CUSTOMERS.flatMap(([area, keys]) =>
  [...sentencesOf(english.get(area) ?? {})].filter(([key]) => keys.test(key)),
);
/** Buttons of a word or two are no sentences. */
const prose = read.filter(([, text]) => text.split(' ').length >= 4);

describe('what customers read in English', () => {
  it('taken together is for a reading age of about nine', () => {
    expect(prose.length).toBeGreaterThan(100);
    expect(grade(prose.map(([, text]) => text))).toBeLessThanOrEqual(GRADE_TOGETHER);
  });

  it('has no single text that is hard', () => {
    expect(
      prose
        .map(([key, text]) => [key, Math.round(grade([text]) * 10) / 10] as const)
        .filter(([, of]) => of > GRADE_ALONE),
    ).toEqual([]);
  });

  it('would be seen to fail if it were written like this', () => {
    const hard = 'Biomechanical considerations necessitate an individualised evaluation of your footwear requirements.';
    expect(grade([hard])).toBeGreaterThan(GRADE_ALONE);
  });

  it('blames nobody, diagnoses nothing, promises nothing', () => {
    const never =
      /\b(wrong foot|bad feet|flat feet|overpronat\w*|pronat\w*|prevents?|protects? (you )?(from|against)|guarantee\w*|cures?|heals? your|your fault|should have|injury[- ]free)\b/i;
    expect(read.filter(([, text]) => never.test(text))).toEqual([]);
  });
});

describe('the formula', () => {
  /** The library's own words: by the formula, 5 sentences, 30 words and 40 syllables give 0.39 × 6 + 11.8 × 4/3 − 15.59. */
  it('is the published one', () => {
    expect(fleschKincaid({ sentence: 5, word: 30, syllable: 40 })).toBeCloseTo(0.39 * 6 + (11.8 * 4) / 3 - 15.59, 10);
  });
});
