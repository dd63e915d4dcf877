import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readAnswersFile, writeAnswersFile } from '../../src/visit/answers-file.ts';
import { anyVisit, visitOf } from './any-visit.ts';
import { toyFlow, toyTables } from './toy-flow.ts';

const read = (source: string) => readAnswersFile(source, 'answers.json', toyFlow, toyTables);
/** A file with a thing changed in the middle of an otherwise good one. */
const withLines = (...lines: string[]) =>
  ['{', '  "flow": "toy",', '  "flowVersion": 3,', '  "language": "en",', ...lines, '}'].join('\n');
const codes = (source: string) => read(source).findings.map(({ code, line }) => [code, line]);

describe('an answers file', () => {
  it('gives back the visit it was written from, but for what was tried on and chosen', () => {
    fc.assert(
      fc.property(anyVisit(toyFlow, toyTables), (visit) => {
        const { choice: _choice, ...rest } = visit;
        const { value, findings } = read(writeAnswersFile(visit));
        expect(value).toEqual({ ...rest, tryOns: [] });
        expect(findings.filter(({ severity }) => severity === 'error')).toEqual([]);
      }),
    );
  });

  it('writeAnswersFile: begin with the flow it belongs to', () => {
    expect(writeAnswersFile(visitOf(toyFlow, {}))).toMatch(/^\{\n {2}"flow": "toy",\n {2}"flowVersion": 3,\n/);
  });

  it('is read whatever order its answers stand in', () => {
    const turned = '{"answers":{"hours":"no","activity":"none"},"language":"de","flowVersion":3,"flow":"toy"}';
    expect(read(turned).value?.answers).toEqual({ activity: 'none', hours: 'no' });
  });

  it('that is not JSON is refused with the line of the slip', () => {
    expect(codes(withLines('  "answers": { "mood": "merry" ', '  "overrides": []'))).toEqual([['file-not-json', 6]]);
    expect(codes('')).toEqual([['file-not-json', 1]]);
    expect(codes('{ "flow": "toy", // a remark\n}')).toEqual([['file-not-json', 1]]);
  });

  it('names a question that does not exist', () => {
    const { value, findings } = read(
      withLines('  "answers": {', '    "mood": "merry",', '    "moood": "merry"', '  }'),
    );
    expect(value).toBeUndefined();
    expect(findings).toEqual([
      {
        code: 'answer-to-no-question',
        severity: 'error',
        file: 'answers.json',
        line: 7,
        at: 'answers › moood',
        value: 'moood',
      },
    ]);
  });

  it('names an option that is not offered, with those that are', () => {
    const [finding] = read(withLines('  "answers": {', '    "mood": "grumpy"', '  }')).findings;
    expect(finding).toMatchObject({ code: 'answer-not-offered', line: 6, value: 'grumpy' });
    expect(finding?.data).toEqual({ expected: 'merry, calm, tired' });
  });

  it('refuses an answer of the wrong kind, and letters where a number belongs', () => {
    expect(codes(withLines('  "answers": { "mood": ["merry"] }'))).toEqual([['answer-not-one-word', 5]]);
    expect(codes(withLines('  "answers": { "size": { "value": "42", "unit": "eu" } }'))).toEqual([
      ['answer-not-a-quantity', 5],
    ]);
    expect(
      codes(
        withLines(
          '  "answers": {},',
          '  "observation": { "feet": { "posture": "standing", "sock": "barefoot",',
          '    "left": { "length": "26 cm" } } }',
        ),
      ),
    ).toEqual([['observation-not-a-number', 7]]);
  });

  it('questions a foot of 26 or 2600 millimetres with the unit that was probably meant', () => {
    const foot = (length: number) =>
      read(
        withLines(
          '  "answers": {},',
          '  "observation": { "feet": { "posture": "standing", "sock": "barefoot",',
          `    "left": { "length": ${length} } } }`,
        ),
      ).findings;
    expect(foot(26)).toMatchObject([
      { code: 'measure-other-unit', line: 7, value: '26', data: { guess: 26, guessUnit: 'cm' } },
    ]);
    expect(foot(2600)).toMatchObject([
      { code: 'measure-other-unit', line: 7, value: '2600', data: { guess: 260, guessUnit: 'mm' } },
    ]);
    expect(foot(264)).toEqual([]);
  });

  it('asks about a drop above the stack instead of averaging it', () => {
    const old = (measured: string) =>
      codes(withLines('  "answers": {},', `  "observation": { "oldPair": { "measured": ${measured} } }`));
    expect(old('{ "drop": 30, "heel-stack": 24 }')).toEqual([['drop-above-stack', 6]]);
    expect(old('{ "drop": 10, "heel-stack": 30, "forefoot-stack": 24 }')).toEqual([
      ['drop-not-heel-minus-forefoot', 6],
    ]);
    expect(old('{ "drop": 8, "heel-stack": 30, "forefoot-stack": 24 }')).toEqual([]);
  });

  it('asks what the hours are for when there is no activity, and still reads', () => {
    const { value, findings } = read(withLines('  "answers": {', '    "hours": "yes"', '  }'));
    expect(findings).toMatchObject([{ code: 'hours-without-activity', severity: 'note', line: 6 }]);
    expect(value?.answers).toEqual({ hours: 'yes' });
  });

  it('refuses another flow, and says so once', () => {
    expect(codes('{\n"flow": "other", "flowVersion": 1, "language": "xx", "answers": {}}')).toEqual([
      ['visit-other-flow', 2],
    ]);
  });

  it('says when it was written for another version of the questions', () => {
    const { value, findings } = read('{"flow":"toy","flowVersion":2,"language":"en","answers":{"mood":"calm"}}');
    expect(findings).toMatchObject([{ code: 'visit-other-version', severity: 'note', data: { given: 2, wanted: 3 } }]);
    expect(value?.answers).toEqual({ mood: 'calm' });
  });

  it('names missing, unknown and repeated fields', () => {
    expect(codes('{\n"flow": "toy",\n"flowVersion": 3,\n"language": "en"\n}')).toEqual([['field-missing', 1]]);
    expect(codes(withLines('  "answers": {},', '  "answer": {}'))).toEqual([['field-unknown', 6]]);
    expect(codes(withLines('  "answers": {', '  "mood": "calm",', '  "mood": "merry" }'))).toEqual([
      ['field-twice', 7],
    ]);
  });

  it('never throws, whatever JSON it holds', () => {
    fc.assert(
      fc.property(fc.json(), fc.jsonValue(), (loose, answers) => {
        read(loose);
        read(JSON.stringify({ ...visitOf(toyFlow, {}), answers, overrides: answers, observation: answers }));
      }),
    );
  });
});
