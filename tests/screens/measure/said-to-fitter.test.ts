import { describe, expect, it } from 'vitest';
import { findingText } from '../../../src/screens/fitter/measure/measure-text.ts';
import { doubtWord } from '../../../src/sizing/size-notes.ts';
import { wordsOf } from '../../../src/words/words-of.ts';
import { allWords, LANGUAGES } from '../../words/word-files.ts';

/** What the advice on a size can say below the measures. */
const SIZE_SAYS = [
  'left-longer',
  'right-longer',
  'one-foot-measured',
  'measured-seated',
  'measured-on-one-foot',
  'try-with-sock',
  'measured-early',
  'measured-late',
  'look-where-it-bends',
  'from-insole',
  'from-box',
  'old-size-differs',
  'us-women-two-scales',
  'child-may-not-feel',
  'measure-first',
  'measure-child-first',
  'measure-again',
];
/** Feet, toes, size or pair called the reader's own. */
const YOURS: Readonly<Record<string, RegExp>> = {
  en: /\b(your|you)\b/i,
  de: /\bIhr(e[nmrs]?)?\b|\bSie tragen\b/,
  fr: /\bv(otre|os)\b|\bvous\b/i,
  es: /\bsus?\b/i,
  ar: /قدم(ي|ا)?ك|أصابعك|مقاسك|حذا[ئء]ك|ستلبسها/,
};

describe.each(LANGUAGES)('the size at the bench in %s', (language) => {
  const words = wordsOf(language, [allWords(language)]);
  const yours = YOURS[language] as RegExp;

  it.each(SIZE_SAYS)('says %s of the wearer, not of the fitter who reads it', (code) => {
    const said = findingText({ code, severity: 'note', data: { mm: 6, count: 2 } }, words);
    expect(said).not.toMatch(/\{\{|-fitter/);
    expect(said).not.toMatch(yours);
  });

  it.each([1, 4, 9])('says how sure it is at %i mm of doubt without calling the feet the fitter’s', (doubt) => {
    expect(words.say(`size.doubt.${doubtWord(doubt)}`)).not.toMatch(yours);
  });

  it('leaves the customer’s own words as they were', () => {
    expect(words.say('finding.left-longer', { mm: 6 })).toMatch(yours);
  });
});
