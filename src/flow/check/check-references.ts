import { USES } from '../../attributes/uses.ts';
import type { Finding } from '../../units/result.ts';
import type { Condition } from '../condition.ts';
import type { Tables } from '../options.ts';
import { plainParts, subjectOf } from '../plain-parts.ts';
import type { Content } from './content.ts';
import type { JsonPath } from './document.ts';
import { findingAt } from './finding-at.ts';
import { optionPlaces, questionPlaces, rowPlaces } from './question-places.ts';
import { misfit, shapeOfAnswer } from './shape.ts';

/** Conditions of the flow that read a question that is not there or comes later, or a value it cannot have. */
export function checkReferences({ flow, flowDocument, rows }: Content, tables: Tables): readonly Finding[] {
  if (!flow || !flowDocument) return [];
  const questions = questionPlaces(flow);
  const indexOf = new Map(questions.map(({ question }, i) => [question.id, i]));

  const inCondition = (condition: Condition | undefined, place: JsonPath, before: number): readonly Finding[] =>
    (condition ? plainParts(condition) : []).flatMap((plain) => {
      const id = subjectOf(plain);
      const index = indexOf.get(id);
      const read = index === undefined ? undefined : questions[index];
      if (index === undefined || !read) return [findingAt(flowDocument, place, 'unknown-question', { value: id })];
      if (index >= before) return [findingAt(flowDocument, place, 'later-question', { value: id })];
      const wrong = misfit(plain, shapeOfAnswer(read.question, tables));
      return wrong ? [findingAt(flowDocument, place, wrong.code, { value: wrong.value, data: { of: id } })] : [];
    });

  return [
    ...questions.flatMap((each, i) => [
      ...inCondition(each.question.askWhen, [...each.place, 'askWhen'], i),
      ...inCondition(each.question.noteWhen, [...each.place, 'noteWhen'], i),
      ...rowPlaces(each).flatMap(({ table, rows: ids, when, place }) => [
        ...inCondition(when, [...place, 'when'], i),
        ...ids.flatMap((value, r) =>
          tables[table].some(({ id }) => id === value)
            ? []
            : [findingAt(flowDocument, [...place, 'rows', r], 'unknown-row', { value, data: { table } })],
        ),
      ]),
      ...optionPlaces(each).flatMap(({ option, place }) => inCondition(option.showWhen, [...place, 'showWhen'], i)),
    ]),
    ...flow.bounds.shortWays.flatMap(({ when }, i) =>
      inCondition(when, ['bounds', 'shortWays', i, 'when'], questions.length),
    ),
    ...rows['activities.json'].flatMap(({ row, document, index }) =>
      row.floors.flatMap((floor, i) =>
        tables.floors.some(({ id }) => id === floor)
          ? []
          : [findingAt(document, [index, 'floors', i], 'unknown-floor', { value: floor })],
      ),
    ),
    ...rows['activities.json'].flatMap(({ row, document, index }) =>
      (row.uses ?? []).flatMap((use, i) =>
        USES.some((known) => known === use)
          ? []
          : [
              findingAt(document, [index, 'uses', i], 'unknown-use', {
                value: use,
                data: { expected: USES.join(', ') },
              }),
            ],
      ),
    ),
  ];
}
