import { findNodeAtLocation, type Node, type ParseError, parseTree } from 'jsonc-parser';
import { z } from 'zod';
import { tooDeepAt } from '../units/nested.ts';
import type { Finding } from '../units/result.ts';
import { BLOCKS, MUST_SHOW, type Template } from './template.ts';

/** Points. Smaller body type is hard to read at the bench; design rule of this project. */
const LEAST_TYPE = 9;
/** Millimetres: one dot row of a 203 dpi printer is 0.125; two print surely. */
const LEAST_LINE = 0.25;
/** Room a card needs inside its margins, millimetres: a code of 57 squares with its border at 0.5 mm, and a few lines. */
const LEAST_ROOM = { width: 60, height: 120 };

const mm = z.number().nonnegative().max(2000);
const row = z.strictObject({
  // Any text, so that a block nobody knows is told with those there are; editors offer those.
  block: z.string().meta({ examples: [...BLOCKS] }),
  columns: z.int().min(1).max(4).optional(),
  most: z.int().min(1).max(50).optional(),
  least: z.int().min(0).max(50).optional(),
  early: z.literal(true).optional(),
});
const rows = z.array(row).min(1);
const points = z.number().positive().max(80);
/** The shape of a template file; written out as a JSON Schema for editors. */
export const templateShape = z.strictObject({
  id: z.string().regex(/^[a-z][a-z0-9-]*$/),
  page: z.strictObject({ width: mm, height: z.union([mm, z.literal('auto')]) }),
  margins: z.strictObject({ top: mm, right: mm, bottom: mm, left: mm }),
  sheet: z.strictObject({ width: mm, height: mm, across: z.int().min(2).max(4) }).optional(),
  ink: z.enum(['tag', 'black']),
  hairline: z.number().positive(),
  type: z.strictObject({
    body: z.array(points).min(1),
    small: points,
    heading: points,
    title: points,
    ticket: points,
    fetch: points,
  }),
  code: z.strictObject({ module: z.number().positive(), least: z.number().min(0.5) }),
  stub: z.strictObject({ back: z.array(row) }).optional(),
  sides: z.array(z.strictObject({ columns: z.int().min(1).max(3).optional(), blocks: rows })).min(1),
  cut: z.boolean(),
});

/** Everything wrong with a print template, with file and line. No findings: it can be used as a `Template`. */
export function checkTemplate(file: string, text: string): readonly Finding[] {
  const errors: ParseError[] = [];
  const deep = tooDeepAt(text);
  const root = deep === undefined ? parseTree(text, errors, { disallowComments: true }) : undefined;
  const at = (path: readonly PropertyKey[]) => lineAt(root, text, path);
  if (errors[0] || !root) {
    const offset = deep ?? errors[0]?.offset ?? 0;
    const line = text.slice(0, offset).split('\n').length;
    return [{ code: 'template-not-json', severity: 'error', file, line, value: text.slice(offset, offset + 30) }];
  }
  const read = templateShape.safeParse(JSON.parse(text));
  if (!read.success) {
    return read.error.issues.map((issue) => ({
      code: 'template-wrong',
      severity: 'error',
      file,
      line: at(issue.path),
      data: { what: issue.path.join('.'), expected: issue.message },
    }));
  }
  const unknown = allRows(read.data).flatMap(({ row: { block }, path }): Finding[] =>
    (BLOCKS as readonly string[]).includes(block)
      ? []
      : [
          {
            code: 'template-unknown-block',
            severity: 'error',
            file,
            line: at(path),
            value: block,
            data: { expected: BLOCKS.join(', ') },
          },
        ],
  );
  if (unknown.length > 0) return unknown;
  const template = read.data as Template;
  return [...blockFindings(template, at), ...sizeFindings(template, at)].map((finding) => ({ ...finding, file }));
}

/** The template in a text without findings. */
export function readTemplate(
  file: string,
  text: string,
): { readonly value?: Template; readonly findings: readonly Finding[] } {
  const findings = checkTemplate(file, text);
  return findings.length > 0 ? { findings } : { value: JSON.parse(text) as Template, findings };
}

type Rows = Pick<z.infer<typeof templateShape>, 'sides' | 'stub'>;
type At = (path: readonly PropertyKey[]) => number;

function allRows({ sides, stub }: Rows) {
  return [
    ...sides.flatMap((side, s) =>
      side.blocks.map((each, b) => ({ row: each, path: ['sides', s, 'blocks', b] as const })),
    ),
    ...(stub?.back ?? []).map((each, b) => ({ row: each, path: ['stub', 'back', b] as const })),
  ];
}

function blockFindings(template: Template, at: At): readonly Finding[] {
  const placed = allRows(template as unknown as Rows);
  // A stub holds ticket, boxes and code of itself.
  const shown = new Set([
    ...placed.map(({ row: each }) => each.block),
    ...(template.stub ? ['head', 'boxes', 'code'] : []),
  ]);
  const missing = [...MUST_SHOW, 'head', 'boxes'].filter((block) => !shown.has(block));
  const cut = placed.filter(
    ({ row: each }) => (MUST_SHOW as readonly string[]).includes(each.block) && each.most !== undefined,
  );
  return [
    ...missing.map((what) => ({
      code: 'template-missing-block',
      severity: 'error' as const,
      line: at(['sides']),
      data: { what },
    })),
    ...cut.map(({ row: each, path }) => ({
      code: 'template-cuts-block',
      severity: 'error' as const,
      line: at(path),
      data: { what: each.block },
    })),
  ];
}

function sizeFindings(template: Template, at: At): readonly Finding[] {
  const { page, margins, type, hairline, sheet } = template;
  const width = page.width - margins.left - margins.right;
  const height = page.height === 'auto' ? Number.POSITIVE_INFINITY : page.height - margins.top - margins.bottom;
  const offSheet =
    sheet && (page.width * sheet.across > sheet.width || (page.height !== 'auto' && page.height > sheet.height));
  const small = Object.entries(type).flatMap(([what, size]) =>
    [size]
      .flat()
      .filter((each) => each < LEAST_TYPE)
      .map((each) => ({ what, size: each })),
  );
  return [
    ...(width < LEAST_ROOM.width || height < LEAST_ROOM.height || offSheet
      ? [
          {
            code: 'template-too-small',
            severity: 'error' as const,
            line: at(['page']),
            data: {
              width,
              height: Math.min(height, 9999),
              'need-width': LEAST_ROOM.width,
              'need-height': LEAST_ROOM.height,
            },
          },
        ]
      : []),
    ...small.map(({ what, size }) => ({
      code: 'template-type-small',
      severity: 'error' as const,
      line: at(['type', what]),
      data: { what, size, least: LEAST_TYPE },
    })),
    ...(hairline < LEAST_LINE
      ? [
          {
            code: 'template-fine-line',
            severity: 'error' as const,
            line: at(['hairline']),
            data: { size: hairline, least: LEAST_LINE },
          },
        ]
      : []),
  ];
}

function lineAt(root: Node | undefined, text: string, path: readonly PropertyKey[]): number {
  for (let end = path.length; end >= 0; end--) {
    const node = root && findNodeAtLocation(root, path.slice(0, end) as (string | number)[]);
    if (node) return text.slice(0, node.offset).split('\n').length;
  }
  return 1;
}
