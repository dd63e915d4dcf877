import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Flow } from '../../src/flow/format.ts';
import { mapOf } from '../../src/flow/map.ts';
import { lines } from '../../src/flow/svg-text.ts';
import { wordsOf } from '../../src/words/words-of.ts';
import { FITTING } from './fitting.ts';
import { PICNIC } from './toy-flows.ts';

const read = (path: string) => JSON.parse(readFileSync(new URL(`../../flows/${path}`, import.meta.url), 'utf8'));
const wordsIn = (language: string) =>
  wordsOf(language, [read(`words/${language}/flow.json`), read(`fitting/words.${language}.json`)]);
const textIn = (svg: string) =>
  svg
    .replace(/<[^>]+>/g, ' ')
    .replace(/&#(\d+);/g, (_, code) => String.fromCharCode(code))
    .replace(/\s+/g, ' ');

for (const language of ['en', 'de']) {
  test(`the map shows every section and question of the flow (${language})`, () => {
    const words = wordsIn(language);
    const text = textIn(mapOf(FITTING, words));
    for (const { id, questions } of FITTING.sections) {
      expect(text).toContain(words.say(`section.${id}`));
      for (const question of questions) expect(text).toContain(`${question.id} · ${question.kind}`);
    }
  });
}

test('the map says in words who is asked', () => {
  const text = textIn(mapOf(PICNIC, wordsIn('en')));
  expect(text).toContain('Only if “weather” is “rain”');
  expect(text).toContain('Only if “basket” holds “cake” or “umbrella” is not “yes”');
});

test('a name with an angle bracket in it stays text', () => {
  const odd: Flow = { ...PICNIC, id: 'a<b>&c' };
  expect(mapOf(odd, wordsIn('en'))).not.toContain('a<b>');
});

test('lines break between words, and a long word has a line of its own', () => {
  expect(lines('only if it rains', 7)).toEqual(['only if', 'it', 'rains']);
  expect(lines('Regenschirmstand da', 5)).toEqual(['Regenschirmstand', 'da']);
});
