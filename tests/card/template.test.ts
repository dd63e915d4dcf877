import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkTemplate, readTemplate } from '../../src/card/check-template.ts';
import { templateSchema } from '../../src/card/template-schema.ts';
import { schemaText } from '../../src/flow/schema/content-schemas.ts';

const FOLDER = 'print-templates';
const formats = readdirSync(FOLDER, { withFileTypes: true })
  .filter((each) => each.isDirectory())
  .map((each) => each.name);
const textOf = (format: string) => readFileSync(`${FOLDER}/${format}/template.json`, 'utf8');
/** A template under repair: what a shop's hand may have made of it. */
interface Loose {
  page: unknown;
  margins: { left: number };
  hairline: number;
  type: { body: unknown };
  code: { least: number };
  sides: { blocks: { block: string; most?: number }[] }[];
  extra?: unknown;
}
const a5 = (change: (template: Loose) => void): string => {
  const template = JSON.parse(textOf('a5')) as Loose;
  change(template);
  return JSON.stringify(template, null, 2);
};
const codes = (text: string) => checkTemplate('t.json', text).map((finding) => finding.code);

describe.each(formats)('the print template %s', (format) => {
  it('has no findings, is named after its folder, and has a page that explains it', () => {
    expect(checkTemplate('template.json', textOf(format))).toEqual([]);
    expect(readTemplate('template.json', textOf(format)).value?.id).toBe(format);
    expect(readFileSync(`${FOLDER}/${format}/README.md`, 'utf8').length).toBeGreaterThan(200);
  });
});

it('the schema that editors read is the one the check uses', () => {
  expect(readFileSync(`${FOLDER}/template.schema.json`, 'utf8')).toBe(schemaText(templateSchema()));
});

describe('a print template', () => {
  it('that names an unknown block is refused with the line and the names there are', () => {
    const [finding] = checkTemplate('t.json', textOf('a5').replace('"block": "strips"', '"block": "stripes"'));
    expect(finding).toMatchObject({ code: 'template-unknown-block', value: 'stripes', file: 't.json' });
    expect(textOf('a5').split('\n')[(finding?.line ?? 0) - 1]).toContain('strips');
    expect(finding?.data?.['expected']).toContain('cautions');
  });

  it('that leaves out the cautions is refused', () => {
    expect(
      codes(
        a5((t) => {
          for (const side of t.sides) side.blocks = side.blocks.filter((row) => row.block !== 'cautions');
        }),
      ),
    ).toEqual(['template-missing-block']);
  });

  it('that would cut the cautions short is refused', () => {
    expect(
      codes(
        a5((t) => {
          for (const row of t.sides.flatMap((side) => side.blocks)) if (row.block === 'cautions') row.most = 3;
        }),
      ),
    ).toEqual(['template-cuts-block']);
  });

  it('whose page is too small for what it must show is refused', () => {
    expect(
      codes(
        a5((t) => {
          t.page = { width: 60, height: 80 };
        }),
      ),
    ).toEqual(['template-too-small']);
    expect(
      codes(
        a5((t) => {
          t.margins.left = 90;
        }),
      ),
    ).toEqual(['template-too-small']);
  });

  it('with type under nine points, a code too fine, or a hairline too thin is refused', () => {
    expect(
      codes(
        a5((t) => {
          t.type.body = [10, 7];
        }),
      ),
    ).toEqual(['template-type-small']);
    expect(
      codes(
        a5((t) => {
          t.code.least = 0.3;
        }),
      ),
    ).toEqual(['template-wrong']);
    expect(
      codes(
        a5((t) => {
          t.hairline = 0.1;
        }),
      ),
    ).toEqual(['template-fine-line']);
  });

  it('that is broken is refused with its line', () => {
    expect(checkTemplate('t.json', '{\n"id": "x",\n')[0]).toMatchObject({ code: 'template-not-json' });
    expect(
      codes(
        a5((t) => {
          t.extra = 1;
        }),
      ),
    ).toEqual(['template-wrong']);
  });
});
