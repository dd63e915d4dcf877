import type { Finding } from '../../units/result.ts';
import type { Flow, Question } from '../format.ts';
import type { Content } from './content.ts';
import type { JsonDocument, JsonPath } from './document.ts';
import { findingAt } from './finding-at.ts';
import { questionPlaces } from './question-places.ts';

/** Places of an interview that are no questions, so that no question may be called so. */
const RESERVED = ['welcome', 'landing', 'asking', 'review', 'finished'];

/** Ids used twice where one must tell things apart, and ids that mean something else already. */
export function checkIds({ flow, flowDocument, rows }: Content): readonly Finding[] {
  const inTables = Object.values(rows).flatMap((table: Rows) =>
    table.filter(({ row }, i) => table.findIndex((other) => other.row.id === row.id) < i),
  );
  return [
    ...inTables.map(({ document, index, row }) => duplicate(document, [index, 'id'], row.id)),
    ...(flow && flowDocument ? idsInFlow(flow, flowDocument) : []),
  ];
}
type Rows = readonly {
  readonly document: JsonDocument;
  readonly index: number;
  readonly row: { readonly id: string };
}[];

const duplicate = (document: JsonDocument, place: JsonPath, value: string) =>
  findingAt(document, place, 'duplicate-id', { value });

function idsInFlow(flow: Flow, document: JsonDocument): readonly Finding[] {
  const questions = questionPlaces(flow);
  const ids = questions.map(({ question }) => question.id);
  const sections = flow.sections.map(({ id }) => id);
  return [
    ...twice(sections).map((i) => duplicate(document, ['sections', i, 'id'], sections[i] ?? '')),
    ...twice(ids).map((i) => duplicate(document, [...(questions[i]?.place ?? []), 'id'], ids[i] ?? '')),
    ...questions
      .filter(({ question }) => RESERVED.includes(question.id))
      .map(({ question, place }) => findingAt(document, [...place, 'id'], 'reserved-id', { value: question.id })),
    ...questions.flatMap(({ question, place }) =>
      listsIn(question).flatMap(([steps, list]) =>
        twice(list).map((i) => duplicate(document, [...place, ...steps, i], list[i] ?? '')),
      ),
    ),
    ...questions.flatMap(({ question, place }) => {
      if (!('extra' in question) || !question.extra || 'table' in question.options) return [];
      const own = question.options.map(({ id }) => id);
      return question.extra.flatMap(({ id }, i) =>
        own.includes(id) ? [duplicate(document, [...place, 'extra', i], id)] : [],
      );
    }),
  ];
}

/** The lists inside a question whose ids must differ. */
function listsIn(question: Question): readonly (readonly [JsonPath, readonly string[]])[] {
  const idsOf = (list: readonly { readonly id: string }[]) => list.map(({ id }) => id);
  if (question.kind === 'number') return [[['units'], idsOf(question.units)]];
  if (question.kind === 'body-map') return [[['regions'], idsOf(question.regions)]];
  if (question.kind === 'against-today') {
    const choices = question.properties.map((each, i) => [['properties', i, 'choices'], each.choices] as const);
    return [[['properties'], idsOf(question.properties)], ...choices];
  }
  if (question.kind === 'yes-no') return [];
  const own = 'table' in question.options ? [] : idsOf(question.options);
  const extra = 'extra' in question && question.extra ? idsOf(question.extra) : [];
  return [
    [['options'], own],
    [['extra'], extra],
  ];
}

/** Indices of what stands in a list a second time. */
const twice = (list: readonly string[]): readonly number[] =>
  list.flatMap((each, i) => (list.indexOf(each) < i ? [i] : []));
