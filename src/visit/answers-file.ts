import {
  findNodeAtLocation,
  getNodeValue,
  type Node,
  type ParseError,
  parseTree,
  printParseErrorCode,
} from 'jsonc-parser';
import type { Flow } from '../flow/format.ts';
import type { Tables } from '../flow/options.ts';
import { tooDeepAt } from '../units/nested.ts';
import type { Finding, Reading } from '../units/result.ts';
import { findingOf, type Path } from './fault.ts';
import { visitReader, type WrittenVisit } from './read-visit.ts';
import type { Reader } from './reader.ts';
import type { Visit } from './visit.ts';

/** One visit's answers as a file: what goes into the line, not what was tried on or chosen at its end. */
export type AnswersFile = Omit<WrittenVisit, 'tryOns' | 'choice'>;

/**
 * Writes a visit's answers as a file that people can read and change.
 *
 * @example
 * ```ts
 * writeAnswersFile(visit); // '{\n  "flow": "toy",\n  "flowVersion": 3,\n …'
 * ```
 */
export function writeAnswersFile(visit: Visit): string {
  const { tryOns: _tryOns, choice: _choice, overrides, observation, ...rest } = visit;
  const file: AnswersFile = {
    ...rest,
    ...(overrides.length > 0 && { overrides }),
    ...(Object.keys(observation).length > 0 && { observation }),
  };
  return `${JSON.stringify(file, null, 2)}\n`;
}

/**
 * Reads an answers file. Each thing wrong with it is a finding with file, line and place; with an error among them no
 * visit comes back, so that no card is drawn from half a file.
 */
export const readAnswersFile = (source: string, file: string, flow: Flow, tables: Tables): Reading<Visit> =>
  readFile(source, file, visitReader(flow, tables));

/** Reads a JSON file with a reader, each fault as a finding with its line. */
export function readFile<T>(source: string, file: string, reader: Reader<T>): Reading<T> {
  const broken: ParseError[] = [];
  // Editors put a mark at the start of some files; it is no part of what was written.
  const text = source.replace(/^\uFEFF/, '');
  const unfit = text.length > LONGEST_FILE ? LONGEST_FILE : tooDeepAt(text);
  const tree =
    unfit === undefined ? parseTree(text, broken, { disallowComments: true, allowTrailingComma: false }) : undefined;
  const first = broken[0];
  if (tree === undefined || first !== undefined) {
    const line = lineAt(text, unfit ?? first?.offset ?? 0);
    const data = { what: first === undefined ? 'ValueExpected' : printParseErrorCode(first.error) };
    return { findings: [{ code: 'file-not-json', severity: 'error', file, line, data }] };
  }
  const findings = twice(tree).map(
    (node): Finding => ({
      code: 'field-twice',
      severity: 'error',
      file,
      line: lineAt(text, node.offset),
      value: String(node.value),
    }),
  );
  const value = reader(getNodeValue(tree), [], (path, fault) => {
    findings.push({ ...findingOf(path, fault), file, line: lineAt(text, nearest(tree, path).offset) });
  });
  const refused = value === undefined || findings.some(({ severity }) => severity === 'error');
  return refused ? { findings } : { value, findings };
}

/** In characters; a full visit takes some thousands. Our choice. */
const LONGEST_FILE = 100_000;

const lineAt = (text: string, offset: number): number => text.slice(0, offset).split('\n').length;

/** The key at a place, or the nearest thing round it when the place itself is missing. */
function nearest(tree: Node, path: Path): Node {
  const node = findNodeAtLocation(tree, [...path]);
  if (node === undefined) return path.length === 0 ? tree : nearest(tree, path.slice(0, -1));
  return node.parent?.type === 'property' ? node.parent : node;
}

/** Keys said twice in one group: a JSON parser would keep the last one in silence. */
function twice(node: Node): readonly Node[] {
  const keys = (node.type === 'object' ? (node.children ?? []) : []).flatMap(
    (property) => property.children?.[0] ?? [],
  );
  const repeated = keys.filter((key, at) => keys.findIndex(({ value }) => value === key.value) < at);
  return [...repeated, ...(node.children ?? []).flatMap(twice)];
}
