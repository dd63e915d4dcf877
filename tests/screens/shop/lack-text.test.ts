import { describe, expect, it } from 'vitest';
import { lackText } from '../../../src/screens/shop/lack-text.ts';
import { lacksList } from '../../../src/screens/shop/lacks-list.ts';
import { wordsOf } from '../../../src/words/words-of.ts';
import { allWords, LANGUAGES } from '../../words/word-files.ts';

const english = wordsOf('en', [allWords('en')]);
const say = (topic: Parameters<typeof lackText>[0]['topic'], what: string) => lackText({ topic, what }, english);

describe('what the range lacks, in words', () => {
  it('names needs, musts, sizes and reasons', () => {
    expect(say('need', 'heel-counter-more')).toBe('more wanted: Stiffness round the heel');
    expect(say('must', 'non-marking')).toBe('non-marking sole');
    expect(say('must', 'price-max 120')).toBe('price up to 120');
    expect(say('must', 'closure-not laces')).toBe('without laces');
    expect(say('size', 'women eu 38 2/3')).toBe('women’s shelf · EU 38 2/3');
    expect(say('size', 'any eu ?')).toBe('any shelf · size not measured');
    expect(say('no-sale', 'price')).toBe('the price');
    expect(say('other-footwear', 'studs')).toBe('shoes with studs');
  });

  it('shows what it has no word for by its id, so that no count is lost', () => {
    expect(say('need', 'glow-more')).toBe('glow-more');
    expect(say('must', 'glow 3')).toBe('glow 3');
    expect(say('size', 'odd')).toBe('odd');
  });

  it.each(LANGUAGES)('as a list in %s never tells of fewer than five who said something of health', (language) => {
    const gaps = {
      visits: 9,
      minutes: { sum: 100, visits: 9 },
      counts: [
        { topic: 'need', what: 'twist-less', health: true, count: 4 },
        { topic: 'need', what: 'drop-less', health: true, count: 5 },
        { topic: 'no-sale', what: 'clinician-first', health: true, count: 2 },
      ],
    } as const;
    const words = wordsOf(language, [allWords(language)]);
    const list = lacksList(gaps, words, { delimiter: ';', decimal: ',' });
    const rows = list.trim().split('\n');
    expect(rows).toHaveLength(5);
    expect(list).not.toContain(words.say('attribute.twist.name'));
    expect(list).not.toContain(words.say('lacks.no-sale.clinician-first'));
    expect(list).toContain(`${words.say('lacks.no-sale.other')};2`);
  });
});
