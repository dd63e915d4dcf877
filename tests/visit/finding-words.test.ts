import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { sentencesOf } from '../../src/words/bundle.ts';
import { allWords, LANGUAGES } from '../words/word-files.ts';

const folder = new URL('../../src/visit/', import.meta.url);
const source = readdirSync(folder)
  .map((name) => readFileSync(new URL(name, folder), 'utf8'))
  .join('\n');
const codes = [
  ...new Set([...source.matchAll(/(?:code: |refuse\(|\? )'([a-z]+(?:-[a-z]+)+)'/g)].map(([, code]) => code ?? '')),
];

describe.each(LANGUAGES)('what is wrong with a file or a code (%s)', (language) => {
  const said = sentencesOf(allWords(language));

  it('can all be said in words', () => {
    expect(codes.length).toBeGreaterThan(20);
    expect(codes.filter((code) => !said.has(`finding.${code}`))).toEqual([]);
  });
});
