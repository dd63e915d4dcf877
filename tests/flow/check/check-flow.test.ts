import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { checkFlow } from '../../../src/flow/check/check-flow.ts';
import { readKnowledge } from '../../../src/flow/check/read-knowledge.ts';
import type { Finding } from '../../../src/units/result.ts';
import { wordsOf } from '../../../src/words/words-of.ts';
import { filesOf, TOY_FILES } from './toy-folder.ts';

/** A fault planted by putting one text for another; its finding stands on the line where `marker` (or the new text) is. */
interface Planted {
  readonly code: string;
  readonly file: string;
  readonly put: string;
  readonly instead: string;
  readonly marker?: string;
  /** Where the finding stands, if not in the file with the fault. */
  readonly foundIn?: string;
  readonly at?: string;
}

const FLOW = 'toy/flow.json';
const RULES = 'toy/rules.json';

const PLANTED: readonly Planted[] = [
  { code: 'bad-json', file: FLOW, instead: '"longest": 4,', put: '"longest": 4,,' },
  { code: 'bad-json', file: RULES, instead: '"weight":0.5', put: '"weight":' },
  { code: 'duplicate-key', file: FLOW, instead: '"longest": 4,', put: '"longest": 4, "longest": 5,' },
  { code: 'not-a-list', file: 'toy/advice.json', instead: TOY_FILES['toy/advice.json'] ?? '', put: '{ "rows": [] }' },
  {
    code: 'schema-breach',
    file: FLOW,
    instead: '"kind": "yes-no"',
    put: '"kind": "maybe"',
    at: 'section sky, question umbrella',
  },
  { code: 'schema-breach', file: FLOW, instead: '"askWhen": {', put: '"askIf": {' },
  {
    code: 'schema-breach',
    file: FLOW,
    instead: '"of": "weather", "is": "rain"',
    put: '"of": "weather", "isNot": "rain"',
  },
  { code: 'bad-id', file: FLOW, instead: '{ "id": "weather"', put: '{ "id": "Weather.1"' },
  {
    code: 'unknown-question',
    file: FLOW,
    instead: '{ "of": "weather", "is": "rain" }',
    put: '{ "of": "wether", "is": "rain" }',
    at: 'section sky, question umbrella',
  },
  {
    code: 'later-question',
    file: FLOW,
    instead: '{ "of": "weather", "is": "rain" }',
    put: '{ "of": "basket", "includes": "cake" }',
  },
  {
    code: 'later-question',
    file: FLOW,
    instead: '{ "of": "umbrella", "is": "yes" }',
    put: '{ "of": "basket", "includes": "cake" }',
    at: 'section sky, question basket, option soup',
  },
  {
    code: 'value-not-among-choices',
    file: FLOW,
    instead: '{ "of": "weather", "is": "rain" }',
    put: '{ "of": "weather", "is": "hail" }',
  },
  {
    code: 'value-not-among-choices',
    file: FLOW,
    instead: '"when": { "of": "weather", "is": "sun" }',
    put: '"when": { "of": "weather", "is": "snow" }',
    at: 'short way quick',
  },
  {
    code: 'condition-never-true',
    file: FLOW,
    instead: '{ "of": "weather", "is": "rain" }',
    put: '{ "of": "weather", "anyBut": "rain" }',
  },
  {
    code: 'condition-never-true',
    file: FLOW,
    instead: '{ "of": "weather", "is": "rain" }',
    put: '{ "of": "weather", "includesAny": ["rain"] }',
  },
  {
    code: 'condition-never-true',
    file: FLOW,
    instead: '{ "of": "weather", "is": "rain" }',
    put: '{ "of": "weather", "atLeast": 3 }',
  },
  { code: 'duplicate-id', file: FLOW, instead: '{ "id": "rain" }', put: '{ "id": "sun" }' },
  { code: 'duplicate-id', file: FLOW, instead: '{ "id": "play"', put: '{ "id": "weather"' },
  { code: 'duplicate-id', file: RULES, instead: '"id":"soup-dry"', put: '"id":"cake-soft"' },
  { code: 'reserved-id', file: FLOW, instead: '{ "id": "play"', put: '{ "id": "review"' },
  {
    code: 'never-asked',
    file: FLOW,
    instead: '{ "of": "weather", "is": "rain" }',
    put: '{ "all": [{ "of": "weather", "is": "rain" }, { "of": "weather", "is": "sun" }] }',
  },
  {
    code: 'always-asked',
    file: FLOW,
    instead: '{ "of": "weather", "is": "rain" }',
    put: '{ "answered": "weather" }',
    at: 'section sky, question umbrella',
  },
  {
    code: 'option-never-offered',
    file: FLOW,
    instead: '{ "of": "umbrella", "is": "yes" }',
    put: '{ "all": [{ "of": "umbrella", "is": "yes" }, { "of": "weather", "is": "sun" }] }',
  },
  {
    code: 'unknown-row',
    file: FLOW,
    instead: '"table": "activities" }',
    put: '"table": "activities", "rowsWhen": [{ "rows": ["kites"], "when": { "of": "weather", "is": "sun" } }] }',
  },
  {
    code: 'later-question',
    file: FLOW,
    instead: '"table": "activities" }',
    put: '"table": "activities", "rowsWhen": [{ "rows": ["kite-flying"], "when": { "of": "umbrella", "is": "yes" } }] }',
  },
  {
    code: 'option-always-offered',
    file: FLOW,
    instead: '"table": "activities" }',
    put: '"table": "activities", "rowsWhen": [{ "rows": ["kite-flying"], "when": { "answered": "weather" } }] }',
  },
  {
    code: 'unknown-question',
    file: FLOW,
    instead: '{ "id": "play", "kind": "one-of",',
    put: '{ "id": "play", "kind": "one-of", "noteWhen": { "of": "wether", "is": "rain" },',
  },
  {
    code: 'option-always-offered',
    file: FLOW,
    instead: '{ "of": "umbrella", "is": "yes" }',
    put: '{ "answered": "play" }',
  },
  {
    code: 'nothing-to-answer',
    file: FLOW,
    instead: '{ "id": "sun" },\n        { "id": "rain" }\n      ] },',
    put: '{ "id": "sun" },\n        { "id": "rain" }\n      ] },\n      { "id": "stuck", "kind": "one-of", "options": [{ "id": "a", "showWhen": { "of": "weather", "is": "sun" } }] },',
    marker: '"id": "stuck"',
  },
  { code: 'too-many-questions', file: FLOW, instead: '"longest": 4', put: '"longest": 3' },
  { code: 'short-way-too-long', file: FLOW, instead: '"screens": 3', put: '"screens": 2' },
  {
    code: 'short-way-never',
    file: FLOW,
    instead: '"when": { "of": "weather", "is": "sun" }',
    put: '"when": { "all": [{ "of": "weather", "is": "sun" }, { "of": "umbrella", "is": "yes" }] }',
  },
  { code: 'typical-too-long', file: FLOW, instead: '"screens": 4', put: '"screens": 2' },
  { code: 'typical-story-missing', file: FLOW, instead: '"story": "ann"', put: '"story": "bo"' },
  {
    code: 'option-changes-nothing',
    file: FLOW,
    instead: '{ "id": "cake" },',
    put: '{ "id": "cake" }, { "id": "salt" },',
    at: 'section sky, question basket, option salt',
  },
  {
    code: 'unknown-use',
    file: 'toy/activities.json',
    instead: '"floors":["moss"]',
    put: '"floors":["moss"],"uses":["bowling"]',
  },
  { code: 'unknown-floor', file: 'toy/activities.json', instead: '"floors":["moss"]', put: '"floors":["lava"]' },
  {
    code: 'words-missing',
    file: 'toy/words.de.json',
    instead: '"ask": "Which? (de)",\n      "why": "To know. (de)",\n      "option"',
    put: '"ask": "Which? (de)",\n      "option"',
    marker: '"weather": {',
  },
  {
    code: 'words-extra',
    file: 'toy/words.en.json',
    instead: '"unit": {',
    put: '"unit": {\n    "miles": "miles",',
    marker: '"miles"',
  },
  { code: 'words-missing', file: 'words/de/sky.json', instead: '"blue"', put: '"red"', marker: '"sky"' },
  { code: 'words-extra', file: 'words/de/sky.json', instead: '"blue"', put: '"red"' },
  { code: 'placeholders-differ', file: 'words/de/sky.json', instead: '{{shade}}', put: '{{colour}}' },
  {
    code: 'text-too-long',
    file: 'toy/words.en.json',
    instead: '"rain": "rain (en)"',
    put: `"rain": "${'rain '.repeat(20)}"`,
  },
  {
    code: 'text-too-long',
    file: 'toy/words.de.json',
    instead: '"ask": "Which? (de)"',
    put: `"ask": "${'Welche? '.repeat(10)}"`,
  },
  {
    code: 'no-source',
    file: RULES,
    instead: '"source":"gull-1901",',
    put: '',
    marker: '"id":"cake-soft"',
    at: 'rule cake-soft',
  },
  {
    code: 'unknown-source',
    file: RULES,
    instead: '"source":"gull-1901"',
    put: '"source":"tern-1902"',
    at: 'rule cake-soft',
  },
  {
    code: 'unknown-source',
    file: 'toy/floors.json',
    instead: '"source":"gull-1901"',
    put: '"source":"tern-1902"',
    at: 'floor moss',
  },
  {
    code: 'unknown-fact',
    file: RULES,
    instead: '"of":"basket","includes":"cake"',
    put: '"of":"hamper","includes":"cake"',
    at: 'rule cake-soft',
  },
  { code: 'unknown-fact', file: RULES, instead: '"per":"load-bounce"', put: '"per":"load-joy"' },
  { code: 'per-not-a-share', file: RULES, instead: '"per":"load-bounce"', put: '"per":"foot-length"' },
  { code: 'unknown-attribute', file: RULES, instead: '"attribute":"drop"', put: '"attribute":"sparkle"' },
  { code: 'unknown-attribute', file: RULES, instead: '"attribute":"waterproof"', put: '"attribute":"rocker"' },
  { code: 'unknown-caution', file: RULES, instead: '"cautions":["spills"]', put: '"cautions":["spills","gulls"]' },
  { code: 'unknown-advice', file: RULES, instead: '"advice":["lid"]', put: '"advice":["lid","bib"]' },
  {
    code: 'caution-never-raised',
    file: 'toy/cautions.json',
    instead: '[\n{',
    put: '[\n{"id":"gulls","level":"mind","source":"common-practice","grade":"common-practice","known":"read"},\n{',
    marker: '"gulls"',
  },
  {
    code: 'advice-never-given',
    file: RULES,
    instead: '"advice":["lid"],',
    put: '',
    foundIn: 'toy/advice.json',
    marker: '"id":"lid"',
  },
  { code: 'weight-out-of-range', file: RULES, instead: '"weight":0.5', put: '"weight":1.5' },
  { code: 'ideal-outside-limits', file: RULES, instead: '"limits":[0,12]', put: '"limits":[5,12]' },
  { code: 'range-backwards', file: RULES, instead: '"ideal":[4,8]', put: '"ideal":[8,4]' },
  { code: 'outside-attribute', file: RULES, instead: '"limits":[0,12]', put: '"limits":[0,1200]' },
  { code: 'ask-not-one-thing', file: RULES, instead: '"ideal":[4,8],', put: '"ideal":[4,8],"shift":2,' },
  {
    code: 'rule-does-nothing',
    file: RULES,
    instead: '"asks":[{"attribute":"drop","ideal":[4,8],"limits":[0,12],"weight":0.5,"per":"load-bounce"}],',
    put: '',
    marker: '"id":"cake-soft"',
  },
  {
    code: 'rule-never-true',
    file: RULES,
    instead: '{"of":"basket","includes":"cake"}',
    put: '{"all":[{"of":"weather","is":"sun"},{"of":"weather","is":"rain"}]}',
  },
  {
    code: 'rule-never-true',
    file: RULES,
    instead: '{"of":"basket","includes":"cake"}',
    put: '{"all":[{"of":"load-bounce","atLeast":0.8},{"not":{"of":"load-bounce","atLeast":0.2}}]}',
  },
  {
    code: 'condition-never-true',
    file: RULES,
    instead: '{"of":"basket","includes":"cake"}',
    put: '{"of":"load-bounce","atLeast":2}',
  },
  { code: 'weak-must', file: RULES, instead: '"grade":"common-practice"', put: '"grade":"contested"' },
  {
    code: 'memory-on-card',
    file: 'toy/cautions.json',
    instead: '"known":"read"',
    put: '"known":"memory"',
    at: 'caution spills',
  },
  { code: 'memory-on-card', file: 'toy/advice.json', instead: '"known":"read"', put: '"known":"memory"' },
];

function plant({ file, instead, put, marker, foundIn }: Planted) {
  const before = TOY_FILES[file] ?? '';
  expect(before).toContain(instead);
  const after = before.replace(instead, () => put);
  const text = foundIn ? (TOY_FILES[foundIn] ?? '') : after;
  const line = text.slice(0, text.lastIndexOf(marker ?? put)).split('\n').length;
  return { line, findings: checkFlow(filesOf({ ...TOY_FILES, [file]: after })).findings };
}

const sound = () => checkFlow(filesOf(TOY_FILES));
const EN_DE = ['en', 'de'].map((language) => {
  const text = readFileSync(new URL(`../../../flows/words/${language}/flow.json`, import.meta.url), 'utf8');
  return wordsOf(language, [JSON.parse(text)]);
});

/** Throws where words are missing or ask for data the finding does not carry. */
function expectSayable({ code, value, at, data }: Finding): void {
  for (const words of EN_DE) {
    const said = words.say(`finding.${code}`, { ...data, ...(value !== undefined && { value }), ...(at && { at }) });
    expect(said.length).toBeGreaterThan(10);
  }
}

describe('a flow folder with nothing wrong', () => {
  test('gives no findings and exact counts', () => {
    // By hand: sun 1 × play 1 × {cake, none} 2; rain 1 × play 1 × (yes: {cake, soup, both, none} 4 + no, not sure: 2 × 2).
    expect(sound()).toEqual({ findings: [], routes: 2, answerPaths: '10', shortest: 3, longest: 4 });
  });

  test('can be read into what the line needs', () => {
    const read = readKnowledge(filesOf(TOY_FILES));
    expect(read.findings).toEqual([]);
    expect(read.value?.rules.map(({ id }) => id)).toEqual(['cake-soft', 'soup-dry']);
  });
});

describe('a fault is found with its file and line', () => {
  for (const planted of PLANTED) {
    test(`${planted.code}: ${planted.put.slice(0, 60) || `without ${planted.instead}`}`, () => {
      const { line, findings } = plant(planted);
      const found = findings.filter(({ code }) => code === planted.code);
      expect(found).toContainEqual(
        expect.objectContaining({ file: planted.foundIn ?? planted.file, line, ...(planted.at && { at: planted.at }) }),
      );
      for (const finding of findings) expectSayable(finding);
    });
  }

  test('no flow at all', () => {
    const { [FLOW]: _, ...rest } = TOY_FILES;
    expect(checkFlow(filesOf(rest)).findings).toContainEqual(expect.objectContaining({ code: 'no-flow' }));
  });

  test('a language without its file', () => {
    const { 'toy/knowledge.de.json': _, ...rest } = TOY_FILES;
    const { findings } = checkFlow(filesOf(rest));
    expect(findings).toEqual([expect.objectContaining({ code: 'words-file-missing', file: 'knowledge.de.json' })]);
  });

  test('an option that changes nothing is a note, and no note once somebody is said to read it', () => {
    const salted = (option: string) => ({
      ...TOY_FILES,
      [FLOW]: TOY_FILES[FLOW]?.replace('{ "id": "cake" },', `{ "id": "cake" }, ${option},`) ?? '',
    });
    const unread = (option: string) =>
      checkFlow(filesOf(salted(option))).findings.filter(({ code }) => code === 'option-changes-nothing');
    expect(unread('{ "id": "salt" }')).toEqual([expect.objectContaining({ severity: 'note', value: 'salt' })]);
    expect(unread('{ "id": "salt", "readBy": "fitter" }')).toEqual([]);
  });

  test('a caution from memory may stand on the fitter’s copy', () => {
    const remembered =
      TOY_FILES['toy/cautions.json']?.replace('"known":"read"', '"known":"memory","fitterOnly":true') ?? '';
    expect(checkFlow(filesOf({ ...TOY_FILES, 'toy/cautions.json': remembered })).findings).toEqual([]);
  });

  test('nothing is read from a folder with an error in it', () => {
    const broken = { ...TOY_FILES, [RULES]: '[' };
    expect(readKnowledge(filesOf(broken)).value).toBeUndefined();
  });
});
