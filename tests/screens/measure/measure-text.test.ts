import { describe, expect, test } from 'vitest';
import { questionFeet } from '../../../src/observation/question-feet.ts';
import { echoText, findingText } from '../../../src/screens/fitter/measure/measure-text.ts';
import type { Finding } from '../../../src/units/result.ts';
import { readMeasure } from '../../../src/units/typed-measure.ts';
import { wordsOf } from '../../../src/words/words-of.ts';
import { allWords, LANGUAGES } from '../../words/word-files.ts';

const foot = { unit: 'mm', from: 80, to: 350 } as const;
const inWords = (language: string) => wordsOf(language, [allWords(language)]);
const echo = (text: string, language: string): string => {
  const { value } = readMeasure(text, foot);
  return value === undefined ? '' : echoText(value, 'mm', inWords(language));
};

describe('a measure is said back as it was understood', () => {
  test.each([
    ['26.5 cm', 'en', '26.5 cm → 265 mm'],
    ['26,5 cm', 'de', '26,5 cm → 265 mm'],
    ['10 1/2 in', 'en', '10.5 in → 266.7 mm'],
    ['10½"', 'de', '10,5 in → 266,7 mm'],
    ['265', 'en', '265 mm'],
  ])('%s in %s', (text, language, said) => {
    expect(echo(text, language)).toBe(said);
  });
});

describe.each(LANGUAGES)('odd input in %s', (language) => {
  const words = inWords(language);

  test.each(['26', 'abc', '-265', '2650000', '265 g', '1.265,5', '900', '26.5 m'])('%s gets its own words', (text) => {
    const { findings } = readMeasure(text, foot);
    expect(findings).toHaveLength(1);
    const said = findingText(findings[0] as Finding, words);
    expect(said).not.toMatch(/\{\{|undefined/);
    expect(said.length).toBeGreaterThan(20);
  });

  test('feet far apart, a girth below the width, a child’s length on the men’s shelf', () => {
    const odd = questionFeet(
      {
        left: { length: 160, ballGirth: 90, width: 95 },
        right: { length: 200 },
        posture: 'standing',
        sock: 'worn-sock',
      },
      'men',
    );
    expect(odd.map(({ code }) => code)).toEqual(['feet-far-apart', 'girth-below-width', 'short-for-shelf']);
    for (const finding of odd) expect(findingText(finding, words)).not.toMatch(/\{\{/);
  });
});
