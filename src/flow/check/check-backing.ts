import type { Finding } from '../../units/result.ts';
import type { Known } from '../knowledge.ts';
import type { Content, Row } from './content.ts';
import type { JsonPath } from './document.ts';
import { findingAt } from './finding-at.ts';

/** What stands in for a source where the trade agrees and nobody has published. */
const COMMON_PRACTICE = 'common-practice';

/** Claims whose source is not listed, cautions and advice that nothing raises, and what only memory knows on a customer's card. */
export function checkBacking({ rows }: Content): readonly Finding[] {
  const sources = new Map(rows['sources.json'].map(({ row }) => [row.id, row.known]));
  const claims = (
    ['activities.json', 'floors.json', 'shoe-kinds.json', 'rules.json', 'cautions.json', 'advice.json'] as const
  ).flatMap((file): readonly Row<unknown>[] => rows[file]);
  const raised = (list: 'cautions' | 'advice') => new Set(rows['rules.json'].flatMap(({ row }) => row[list] ?? []));
  return [
    ...claims.flatMap((each) => unknownSources(each, sources)),
    ...rows['cautions.json'].flatMap((each) =>
      each.row.always || raised('cautions').has(each.row.id) ? [] : about(each, 'caution-never-raised'),
    ),
    ...rows['advice.json'].flatMap((each) =>
      raised('advice').has(each.row.id) ? [] : about(each, 'advice-never-given'),
    ),
    ...[...rows['cautions.json'], ...rows['advice.json']].flatMap((each) => fromMemory(each, sources)),
  ];
}

const about = ({ document, index }: Row<unknown>, code: string, place: JsonPath = [], value?: string) => [
  findingAt(document, [index, ...place], code, value === undefined ? {} : { value }),
];

function unknownSources(each: Row<unknown>, sources: ReadonlyMap<string, Known>): readonly Finding[] {
  return placesOfSource(each.row, []).flatMap(({ place, source }) =>
    source === COMMON_PRACTICE || sources.has(source) ? [] : about(each, 'unknown-source', place, source),
  );
}

/** Every `source` in a row, however deep: an activity has one for each load. */
function placesOfSource(
  value: unknown,
  place: JsonPath,
): readonly { readonly place: JsonPath; readonly source: string }[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => {
    const here = [...place, Array.isArray(value) ? Number(key) : key];
    return key === 'source' && typeof inner === 'string'
      ? [{ place: here, source: inner }]
      : placesOfSource(inner, here);
  });
}

interface Printed {
  readonly known: Known;
  readonly source: string;
  readonly fitterOnly?: true;
}

/** A customer's card says nothing that nobody looked up: such a row, or one whose source is such, is `fitterOnly`. */
function fromMemory(each: Row<Printed>, sources: ReadonlyMap<string, Known>): readonly Finding[] {
  const { known, source, fitterOnly } = each.row;
  const remembered = known === 'memory' || sources.get(source) === 'memory';
  return remembered && !fitterOnly ? about(each, 'memory-on-card', ['known']) : [];
}
