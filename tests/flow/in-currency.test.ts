import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { inCurrency } from '../../src/flow/in-currency.ts';
import { spelledOptions } from '../../src/flow/options.ts';
import { questionsOf } from '../../src/flow/route.ts';
import { moneyText } from '../../src/units/money-text.ts';
import { wordsOf } from '../../src/words/words-of.ts';
import { allWords } from '../words/word-files.ts';
import { FITTING } from './fitting.ts';

const inWords = (language: string) => wordsOf(language, [allWords(language)]);
const KEY = 'question.budget.option.up-to-60';

test('the examples in the docs', () => {
  expect(moneyText(120, 'EUR', 'en')).toBe('€120');
  expect(moneyText(120, 'EUR', 'de')).toBe('120\u00a0€');
  expect(inCurrency(inWords('en'), FITTING, 'EUR').say(KEY)).toBe('Up to €60');
});

test.each([
  ['en', 'GBP', '£60'],
  ['de', 'CHF', '60\u00a0CHF'],
  ['fr', 'EUR', '60\u00a0€'],
  ['es', 'EUR', '60\u00a0€'],
  ['ar', 'EUR', '60\u00a0€'],
])('somebody who reads %s in a shop that takes %s is asked about sums like %s', (language, currency, sum) => {
  expect(inCurrency(inWords(language), FITTING, currency).say(KEY)).toContain(sum);
});

test('until the shop is known a sum is a bare figure, and what is no sum is never touched', () => {
  const words = inWords('en');
  expect(inCurrency(words, FITTING, undefined).say(KEY)).toBe('Up to 60');
  expect(inCurrency(words, FITTING, 'EUR').say('question.age-band.option.under-6')).toBe('Under 6');
});

test('every option that is a sum names its figure in every language', () => {
  for (const language of FITTING.languages) {
    const words = inWords(language);
    for (const question of questionsOf(FITTING)) {
      for (const { id, sum } of spelledOptions(question)) {
        if (sum === undefined) continue;
        expect(words.say(`question.${question.id}.option.${id}`)).toContain(words.number(sum));
      }
    }
  }
});

test('the sum on a button is the one that no pair may cost more than', () => {
  const file = new URL('../../flows/fitting/rules.json', import.meta.url);
  const rules = JSON.parse(readFileSync(file, 'utf8')) as readonly {
    readonly when?: { readonly of?: string; readonly is?: string };
    readonly musts?: readonly { readonly attribute: string; readonly value: unknown }[];
  }[];
  const budget = questionsOf(FITTING).find(({ id }) => id === 'budget');
  const sums = budget ? spelledOptions(budget).filter(({ sum }) => sum !== undefined) : [];
  expect(sums).toHaveLength(4);
  for (const { id, sum } of sums) {
    const rule = rules.find(({ when }) => when?.of === 'budget' && when.is === id);
    expect(rule?.musts).toEqual([{ attribute: 'price-max', value: sum }]);
  }
});
