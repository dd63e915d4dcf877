import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { NUMBER_ATTRIBUTES } from '../../src/attributes/attributes.ts';
import { USES } from '../../src/attributes/uses.ts';
import { GAP_TOPICS } from '../../src/gaps/gaps.ts';
import { CONTRAST_PARTS } from '../../src/shortlist/contrast.ts';
import { MUST_ATTRIBUTES } from '../../src/shortlist/musts.ts';
import { EASE_IN_TRIGGERS } from '../../src/shortlist/shortlist.ts';
import { MAIN } from '../profile/main-knowledge.ts';

type Tree = { readonly [key: string]: string | Tree };
const read = (language: string): Tree =>
  JSON.parse(readFileSync(new URL(`../../flows/words/${language}/shortlist.json`, import.meta.url), 'utf8'));

const flat = (tree: Tree, before = ''): [string, string][] =>
  Object.entries(tree).flatMap(([key, value]): [string, string][] =>
    typeof value === 'string' ? [[before + key, value]] : flat(value, `${before}${key}.`),
  );

const holes = (text: string) => [...text.matchAll(/\{\{(\w+)\}\}/g)].map(([, name]) => name).sort();

const NEEDED = [
  ...NUMBER_ATTRIBUTES.flatMap((key) => [
    `reason.${key}-meets`,
    ...['more', 'less', 'unknown'].map((direction) => `misgiving.${key}-${direction}`),
  ]),
  ...MAIN.rules.flatMap(({ wishes = [] }) => wishes.flatMap(({ id }) => [`reason.wish-${id}`, `misgiving.wish-${id}`])),
  ...[...USES, 'other'].map((use) => `misgiving.made-for-${use}`),
  ...['tall-and-soft', 'runs-small', 'runs-large', 'last-pair'].map((code) => `misgiving.${code}`),
  ...['closest', 'also-close', 'pulled-in', ...CONTRAST_PARTS].map((part) => `part.${part}`),
  ...['closest-on-paper', 'feet-decide', 'none'].map((code) => `sureness.${code}`),
  ...['instead', 'without'].map((code) => `what-if.${code}`),
  ...EASE_IN_TRIGGERS.map((trigger) => `easeIn.${trigger}`),
  ...['came-in', 'went-out', 'up', 'down'].map((what) => `moved.${what}`),
  ...GAP_TOPICS.map((topic) => `lacks.${topic}.title`),
  ...[...MUST_ATTRIBUTES, 'size'].map((key) => `lacks.must.${key}`),
];

describe.each(['en', 'de'])('the words of the shortlist in %s', (language) => {
  const words = new Map(flat(read(language)));

  test('there is one for everything that can be said', () => {
    expect(NEEDED.filter((key) => !words.has(key))).toEqual([]);
  });

  test('reasons and misgivings are short enough to read standing up', () => {
    for (const [key, text] of words)
      if (/^(reason|misgiving|part)\./.test(key)) expect(text.length, key).toBeLessThanOrEqual(56);
  });

  test('nothing is promised, diagnosed or scored', () => {
    for (const [key, text] of words)
      expect(text, key).not.toMatch(/prevent|protect|injur|perfect|best|verhinder|schütz|verletz|perfekt|score/i);
  });
});

test('both languages say the same things with the same gaps to fill', () => {
  const shape = (language: string) => flat(read(language)).map(([key, text]) => [key, holes(text)]);
  expect(shape('de')).toEqual(shape('en'));
});
