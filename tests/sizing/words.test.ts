import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const wordsOf = (language: string) =>
  JSON.parse(readFileSync(new URL(`../../flows/words/${language}/size.json`, import.meta.url), 'utf8'));

/** Dotted paths of all texts, with their placeholders. */
function texts(node: unknown, path = ''): string[] {
  if (typeof node === 'string') return [`${path} ${(node.match(/\{\{\w+\}\}/g) ?? []).sort().join('')}`];
  return Object.entries(node as object).flatMap(([key, value]) => texts(value, `${path}.${key}`));
}

describe('the words for sizes', () => {
  test('are the same keys and placeholders in English and German', () => {
    expect(texts(wordsOf('de')).sort()).toEqual(texts(wordsOf('en')).sort());
  });

  test('have a text for every code that sizing, observation and units give', () => {
    const files = [
      'sizing/size-advice',
      'sizing/size-notes',
      'sizing/judge-box',
      'sizing/box-fit',
      'sizing/systems/systems',
      'observation/check-observation',
      'observation/check-parts',
      'observation/question-feet',
      'observation/measuring-sheet',
      'units/typed-measure',
    ];
    const source = files
      .map((file) => readFileSync(new URL(`../../src/${file}.ts`, import.meta.url), 'utf8'))
      .join('\n');
    const said = [...source.matchAll(/(?:code: |refuse\(|note\(|under\([^)]*\), )([^,)]*)/g)].map((match) => match[1]);
    const found = said.flatMap((text) =>
      [...(text ?? '').matchAll(/'([a-z]+-[a-z-]+)'/g)].map((match) => match[1] ?? ''),
    );
    const { finding } = wordsOf('en');
    expect(found.length).toBeGreaterThan(30);
    for (const code of found) expect(finding[code] ?? finding[`${code}_other`], code).toBeTypeOf('string');
  });
});
