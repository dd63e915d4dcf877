import { describe, expect, it } from 'vitest';
import { adviceText } from '../../../src/card/text/advice-text.ts';
import { loadKnowledge, loadStock, loadVisit } from '../../../src/command-line/load.ts';
import { firstWords } from '../../../src/screens/fitter/first-words.ts';
import { aboutText } from '../../../src/screens/fitter/why-text.ts';
import { wordsOf } from '../../../src/words/words-of.ts';
import { benchLine } from '../../../src/worker/bench-line.ts';
import { allWords, LANGUAGES } from '../../words/word-files.ts';

const knowledge = loadKnowledge();
const { stock } = loadStock('demo/stock.csv', '2026-11-25T09:12:00');
const inWords = (language: string) => wordsOf(language, [allWords(language)]);

describe('what an answer led to, as the fitter reads it', () => {
  it('names the caution and the thing to try first by their first words', () => {
    const { visit } = loadVisit('flows/fitting/stories/netball-old-sprain.json', knowledge);
    const { why, line } = benchLine({ visit, aside: [], pulledIn: [] }, knowledge, stock, 1);
    const words = inWords('en');
    const led = why.map((each) => aboutText(each, line.profile.size.toeRoom, 'EUR', words));
    expect(led).toContain('caution: An ankle that gives way should be checked');
    expect(aboutText({ kind: 'advice', about: 'room-to-grow' }, [10, 15], 'EUR', words)).toBe(
      'to try first: Leave 10 to 15 mm in front of the toes',
    );
  });

  it.each(LANGUAGES)('is told by one sentence of each caution and advice in %s, cut at no other place', (language) => {
    const words = inWords(language);
    const texts = [
      ...knowledge.cautions.map(({ id }) => words.say(`caution.${id}.text`)),
      ...knowledge.advice.map(({ id }) => adviceText(id, [10, 15], words)),
    ];
    const sentences = new Intl.Segmenter(language, { granularity: 'sentence' });
    for (const text of texts) {
      const [first] = sentences.segment(text);
      expect(firstWords(text)).toBe(first?.segment.trim().replace(/\.$/, ''));
    }
  });
});
