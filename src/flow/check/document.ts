import { findNodeAtLocation, type Node, type ParseError, parseTree, printParseErrorCode } from 'jsonc-parser';
import { tooDeepAt } from '../../units/nested.ts';
import type { Finding } from '../../units/result.ts';

/** A file of a flow folder, as read. `path` is how the findings name it. */
export interface ContentFile {
  readonly path: string;
  readonly text: string;
}

/** Where in a JSON file something stands: keys and indices from the top. */
export type JsonPath = readonly (string | number)[];

/** A JSON file that knows on which line each of its values stands. */
export interface JsonDocument {
  readonly path: string;
  readonly value: unknown;
  /** The line of the value at this place, or of the nearest thing around it that is there. */
  lineOf(place: JsonPath): number;
}

const STRICT = { disallowComments: true, allowTrailingComma: false, allowEmptyContent: false };

/** Reads one file. With broken JSON there is no document, and the finding names the line of the first fault. */
export function readDocument(file: ContentFile): {
  readonly document?: JsonDocument;
  readonly findings: readonly Finding[];
} {
  const errors: ParseError[] = [];
  const deep = tooDeepAt(file.text);
  const tree = deep === undefined ? parseTree(file.text, errors, STRICT) : undefined;
  const lineAt = (offset: number) => file.text.slice(0, offset).split('\n').length;
  const [first] = errors;
  if (first || !tree) {
    const what = first ? printParseErrorCode(first.error) : 'ValueExpected';
    const line = lineAt(deep ?? first?.offset ?? 0);
    return { findings: [{ code: 'bad-json', severity: 'error', file: file.path, line, value: what }] };
  }
  const lineOf = (place: JsonPath): number => {
    const node = findNodeAtLocation(tree, [...place]);
    if (node || place.length === 0)
      return lineAt((node?.parent?.type === 'property' ? node.parent : node)?.offset ?? 0);
    return lineOf(place.slice(0, -1));
  };
  const findings = duplicateKeys(tree).map(({ key, offset }) => ({
    code: 'duplicate-key',
    severity: 'error' as const,
    file: file.path,
    line: lineAt(offset),
    value: key,
  }));
  // The tree's own values have no prototype, which the schema library trips over.
  return { document: { path: file.path, value: JSON.parse(file.text), lineOf }, findings };
}

/** Of two equal keys JSON keeps the last and says nothing, so the first would be lost without a sound. */
function duplicateKeys(node: Node): readonly { readonly key: string; readonly offset: number }[] {
  const seen = new Set<string>();
  return (node.children ?? []).flatMap((child) => {
    const below = duplicateKeys(child);
    const name = node.type === 'object' ? child.children?.[0] : undefined;
    if (!name || !seen.has(name.value)) {
      if (name) seen.add(name.value);
      return below;
    }
    return [{ key: String(name.value), offset: name.offset }, ...below];
  });
}
