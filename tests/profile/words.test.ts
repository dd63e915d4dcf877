import { expect, it } from 'vitest';
import de from '../../flows/words/de/profile.json' with { type: 'json' };
import en from '../../flows/words/en/profile.json' with { type: 'json' };
import { BASES, CAUTION_LEVELS, GRADES, OUTCOMES } from '../../src/flow/knowledge.ts';
import { HOLDS } from '../../src/visit/visit.ts';
import { MAIN } from './main-knowledge.ts';

/** Every leaf as `path {{placeholders}}`, so that two languages can be compared. */
function leaves(words: object, path = ''): readonly string[] {
  return Object.entries(words).flatMap(([key, value]) =>
    typeof value === 'string'
      ? [`${path}${key} ${(value.match(/\{\{\w+\}\}/g) ?? []).sort()}`]
      : leaves(value, `${path}${key}.`),
  );
}

it('English and German say the same things with the same data', () => {
  expect(leaves(de)).toEqual(leaves(en));
});

it.each([
  ['outcome', OUTCOMES],
  ['hold', HOLDS],
  ['level', CAUTION_LEVELS],
  ['grade', GRADES],
  ['basis', BASES],
  ['must', [...new Set(MAIN.rules.flatMap((rule) => (rule.musts ?? []).map((must) => must.attribute)))].sort()],
] as const)('every %s has words and none is left over', (area, ids) => {
  expect(Object.keys(en[area]).sort()).toEqual([...ids].sort());
});
