import type { z } from 'zod';
import type { Finding } from '../../units/result.ts';
import type { Flow } from '../format.ts';
import type { Tables } from '../options.ts';
import { TABLE_SCHEMAS } from '../schema/content-schemas.ts';
import { flowSchema } from '../schema/flow.ts';
import { type ContentFile, type JsonDocument, readDocument } from './document.ts';
import { fileName } from './finding-at.ts';
import { schemaFindings } from './schema-findings.ts';

type TableFile = keyof typeof TABLE_SCHEMAS;

/** One row of a table that fits its schema, and where it stands. */
export interface Row<T> {
  readonly row: T;
  readonly document: JsonDocument;
  readonly index: number;
}
export type Rows = { readonly [File in TableFile]: readonly Row<z.infer<(typeof TABLE_SCHEMAS)[File]>>[] };

/** A flow folder's files, read as far as they can be. Rows and files that cannot be read are left out. */
export interface Content {
  readonly flow?: Flow;
  readonly flowDocument?: JsonDocument;
  readonly rows: Rows;
  /** Files of words, by language. */
  readonly words: ReadonlyMap<string, readonly JsonDocument[]>;
  /** Stories by file name, without the ending. */
  readonly stories: ReadonlyMap<string, JsonDocument>;
}

/** Reads `flow.json`, the tables, `words.<lang>.json`, `knowledge.<lang>.json`, `words/<lang>/*.json` and `stories/*.json`. */
export function readContent(files: readonly ContentFile[]): {
  readonly content: Content;
  readonly findings: readonly Finding[];
} {
  const findings: Finding[] = [];
  const documents = files.flatMap((file) => {
    const read = readDocument(file);
    findings.push(...read.findings);
    return read.document ?? [];
  });
  const isStory = ({ path }: JsonDocument) => /(^|\/)stories\/[^/]+\.json$/.test(path);
  const named = (name: string) => documents.find((each) => fileName(each.path) === name && !isStory(each));

  const tableOf = <T>(file: TableFile, schema: z.ZodType<T>): readonly Row<T>[] => {
    const document = named(file);
    if (!document) return [];
    const read = readRows(document, schema);
    findings.push(...read.findings);
    return read.rows;
  };
  const rows = Object.fromEntries(
    Object.entries(TABLE_SCHEMAS).map(([file, schema]) => [file, tableOf(file as TableFile, schema as z.ZodType)]),
  ) as unknown as Rows;

  const words = new Map<string, readonly JsonDocument[]>();
  for (const document of documents) {
    const language = languageOf(document.path);
    if (language) words.set(language, [...(words.get(language) ?? []), document]);
  }
  const stories = new Map(documents.filter(isStory).map((each) => [fileName(each.path).replace('.json', ''), each]));
  const flow = readFlow(named('flow.json'), files, findings);
  return { content: { ...flow, rows, words, stories }, findings };
}

function readFlow(
  document: JsonDocument | undefined,
  files: readonly ContentFile[],
  findings: Finding[],
): Pick<Content, 'flow' | 'flowDocument'> {
  if (!document) {
    const there = files.some(({ path }) => fileName(path) === 'flow.json');
    if (!there) findings.push({ code: 'no-flow', severity: 'error', file: 'flow.json' });
    return {};
  }
  const { $schema: _, ...value } = isObject(document.value) ? document.value : {};
  const read = flowSchema.safeParse(isObject(document.value) ? value : document.value);
  if (read.success) return { flow: read.data, flowDocument: document };
  findings.push(...schemaFindings(document, [], read.error));
  return { flowDocument: document };
}

function readRows<T>(document: JsonDocument, schema: z.ZodType<T>) {
  if (!Array.isArray(document.value)) {
    const finding: Finding = { code: 'not-a-list', severity: 'error', file: document.path, line: document.lineOf([]) };
    return { rows: [], findings: [finding] };
  }
  const rows: Row<T>[] = [];
  const findings = document.value.flatMap((value, index) => {
    const read = schema.safeParse(value);
    if (read.success) rows.push({ row: read.data, document, index });
    return read.success ? [] : schemaFindings(document, [index], read.error);
  });
  return { rows, findings };
}

const languageOf = (path: string): string | undefined =>
  /(?:^|\/)(?:words|knowledge)\.([A-Za-z-]+)\.json$/.exec(path)?.[1] ??
  /(?:^|\/)words\/([A-Za-z-]+)\/[^/]+\.json$/.exec(path)?.[1];

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The ids and groups of the rows that could be read. */
export const tablesIn = ({ rows }: Content): Tables => ({
  activities: rows['activities.json'].map(({ row }) => row),
  floors: rows['floors.json'].map(({ row }) => row),
  'shoe-kinds': rows['shoe-kinds.json'].map(({ row }) => row),
});
