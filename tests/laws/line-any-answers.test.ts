import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sayFinding } from '../../src/command-line/say-findings.ts';
import { readAnswersFile, writeAnswersFile } from '../../src/visit/answers-file.ts';
import { knowledge, languages, tables, textFor, visits } from './line-kit.ts';
import { RUNS } from './runs.ts';

type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

/** What might stand in a file where an answer should. */
const anyValue: fc.Arbitrary<Json> = fc.oneof(
  fc.constantFrom<Json>(null, true, '', 'none', 'not-sure', [], {}, ['none', 'none'], -1, 1e300, '__proto__', {
    when: 'now',
  }),
  fc.jsonValue({ maxDepth: 2 }) as fc.Arbitrary<Json>,
);

/** The same file with one thing in it, at any depth, replaced, removed, renamed or added. */
function spoilt(file: Json, draw: readonly number[], value: Json): Json {
  const [step = 0, ...rest] = draw;
  if (file === null || typeof file !== 'object' || rest.length === 0) return value;
  if (Array.isArray(file)) {
    if (file.length === 0) return [value];
    const at = step % file.length;
    return file.map((each, i) => (i === at ? spoilt(each, rest, value) : each));
  }
  const entries = Object.entries(file);
  const at = step % (entries.length + 1);
  if (at === entries.length) return { ...file, [typeof value === 'string' ? value : 'sparkle']: value };
  return Object.fromEntries(
    entries.flatMap(([key, each], i) =>
      i !== at ? [[key, each]] : step % 7 === 0 ? [] : [[step % 5 === 0 ? `${key}-x` : key, spoilt(each, rest, value)]],
    ),
  );
}

/** Reads a file and, where it reads, goes on to a card; what does not read has said why. */
function endsWell(source: string): 'card' | 'findings' {
  const { value, findings } = readAnswersFile(source, 'answers.json', knowledge.flow, tables);
  if (!value) {
    expect(findings.some(({ severity }) => severity === 'error')).toBe(true);
    expect(findings.every(({ file }) => file === 'answers.json')).toBe(true);
    for (const finding of findings)
      for (const words of languages) expect(sayFinding(finding, words)).toMatch(/^(note: )?answers\.json:\d+/);
    return 'findings';
  }
  expect(textFor(value).title).not.toBe('');
  expect(textFor(value, 'fitter').bench).toBeDefined();
  return 'card';
}

describe('any answers at all', () => {
  it('that are valid end in a card, for the customer and for the fitter, in either language', () => {
    fc.assert(
      fc.property(visits, (visit) => {
        expect(endsWell(writeAnswersFile(visit))).toBe('card');
      }),
      RUNS,
    );
  });

  it('with something in them spoilt end in a card or in findings', () => {
    const ends = { card: 0, findings: 0 };
    fc.assert(
      fc.property(visits, fc.array(fc.nat(1000), { minLength: 1, maxLength: 6 }), anyValue, (visit, draw, value) => {
        const file = JSON.parse(writeAnswersFile(visit)) as Json;
        ends[endsWell(JSON.stringify(spoilt(file, draw, value)))] += 1;
      }),
      RUNS,
    );
    expect(ends.findings).toBeGreaterThan(5);
  });

  it('that are no answers end in findings', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: 'binary' }), fc.json()), (source) => {
        expect(endsWell(source)).toBe('findings');
      }),
      RUNS,
    );
  });
});
