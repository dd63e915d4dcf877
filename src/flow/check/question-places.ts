import type { Flow, Option, Question } from '../format.ts';
import type { JsonPath } from './document.ts';

/** A question and where it stands in flow.json. */
export interface QuestionPlace {
  readonly question: Question;
  readonly place: JsonPath;
}

export const questionPlaces = (flow: Flow): readonly QuestionPlace[] =>
  flow.sections.flatMap((section, s) =>
    section.questions.map((question, q) => ({ question, place: ['sections', s, 'questions', q] })),
  );

/** The options spelled out in a question, and where each stands. */
export function optionPlaces({
  question,
  place,
}: QuestionPlace): readonly { readonly option: Option; readonly place: JsonPath }[] {
  if (!('options' in question)) return [];
  const own = 'table' in question.options ? [] : question.options;
  const extra = 'extra' in question && question.extra ? question.extra : [];
  return [
    ...own.map((option, i) => ({ option, place: [...place, 'options', i] })),
    ...extra.map((option, i) => ({ option, place: [...place, 'extra', i] })),
  ];
}

/** The limits a question puts on rows of its table, and where each stands. */
export function rowPlaces({ question, place }: QuestionPlace) {
  if (!('options' in question && 'table' in question.options)) return [];
  const { table, rowsWhen = [] } = question.options;
  return rowsWhen.map((limit, i) => ({ ...limit, table, place: [...place, 'options', 'rowsWhen', i] }));
}
