import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { check } from '../../src/command-line/check.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'templates-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const a5 = readFileSync('print-templates/a5/template.json', 'utf8');
const roll = readFileSync('print-templates/roll80/template.json', 'utf8');
const put = (id: string, text: string): void => {
  mkdirSync(join(folder, id));
  writeFileSync(join(folder, id, 'template.json'), text);
};
const found = () => check([folder]).findings.map(({ code, line, value }) => ({ code, line, value }));

describe('a shop that checks its print templates', () => {
  it('hears that those of the project are sound', () => {
    expect(check(['print-templates'])).toEqual({ text: 'The print templates are sound.\n', findings: [] });
  });

  it('hears of an unknown block with its line', () => {
    put('a5', a5.replace('"strips"', '"stripes"'));
    const line = a5.split('\n').findIndex((each) => each.includes('"strips"')) + 1;
    expect(found()).toEqual([{ code: 'template-unknown-block', line, value: 'stripes' }]);
  });

  it('hears that a template is not named after its folder', () => {
    put('ours', a5);
    expect(found()).toEqual([{ code: 'template-misnamed', line: undefined, value: 'a5' }]);
  });

  it('hears which words run over the margin of a page that a trial card, or the fitter’s copy of it, does not fit on', () => {
    put('tiny', a5.replace('"id": "a5"', '"id": "tiny"').replace('"width": 148', '"width": 82'));
    const [first] = found();
    expect(first).toMatchObject({ code: 'template-overflows' });
    expect(first?.value).not.toBe('');
  });

  it('hears of type too large for a narrow roll, where every number by itself is allowed', () => {
    put('roll80', roll.replace('"body": [9]', '"body": [40]'));
    expect(found().map(({ code }) => code)).toContain('template-overflows');
  });

  it('hears of labels so large that a size would be cut in two', () => {
    put('roll80', roll.replace('"fetch": 15', '"fetch": 60'));
    expect(found()).toEqual([{ code: 'template-cuts', line: undefined, value: 'Regal' }]);
  });
});
