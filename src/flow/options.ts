import type { Answer, Answers } from './answers.ts';
import type { Option, Question, TableName, TableOptions } from './format.ts';
import { type HeldValue, holds } from './holds.ts';
import type { Knowledge } from './knowledge.ts';

/** What a flow's questions need to know of a table: its rows' ids, and their groups for the first tap. */
export type Tables = Readonly<Record<TableName, readonly { readonly id: string; readonly group: string }[]>>;

export const tablesOf = (knowledge: Pick<Knowledge, 'activities' | 'floors' | 'shoeKinds'>): Tables => ({
  activities: knowledge.activities,
  floors: knowledge.floors,
  'shoe-kinds': knowledge.shoeKinds,
});

/** Every option a question could ever offer: its table's rows or its own, then the extra ones. */
export function allOptions(question: Question, tables: Tables): readonly Option[] {
  if (!('options' in question)) return [];
  const { options } = question;
  const rows = 'table' in options ? tables[options.table].map(({ id }) => limitedRow(options, id) ?? { id }) : options;
  return [...rows, ...spelledExtra(question)];
}

/** The options offered to somebody with these answers in play, in order. */
export function offeredOptions(question: Question, tables: Tables, inPlay: Answers): readonly Option[] {
  return allOptions(question, tables).filter((option) => isShown(option, inPlay));
}

const isShown = ({ showWhen }: Option, values: Readonly<Record<string, HeldValue>>): boolean =>
  showWhen === undefined || holds(showWhen, values);

/**
 * What is left of an answer once options that are no longer offered are taken out of it; nothing if that was all of it.
 *
 * An adult who first tapped a child's age keeps the signs that hold for both, and is asked again only if none do.
 */
export function stillOffered(question: Question, answer: Answer, inPlay: Answers): Answer | undefined {
  const gone = goneOptions(question, inPlay);
  if (gone.size === 0) return answer;
  if (typeof answer === 'string') return gone.has(answer) ? undefined : answer;
  if (Array.isArray(answer)) {
    const kept = answer.filter((id) => !gone.has(id));
    return kept.length > 0 ? kept : undefined;
  }
  const kept = Object.entries(answer).filter(([id]) => !gone.has(id));
  return kept.length > 0 ? (Object.fromEntries(kept) as Answer) : undefined;
}

/** Options hidden by these answers. A question names the rows that not everybody is offered, so no table is needed. */
function goneOptions(question: Question, inPlay: Answers): ReadonlySet<string> {
  return new Set(
    [...limitedRows(question), ...spelledOptions(question)]
      .filter((option) => !isShown(option, inPlay))
      .map(({ id }) => id),
  );
}

/** A question's own options, without a table's rows. */
export function spelledOptions(question: Question): readonly Option[] {
  if (!('options' in question)) return [];
  return [...('table' in question.options ? [] : question.options), ...spelledExtra(question)];
}

const spelledExtra = (question: Question): readonly Option[] => ('extra' in question && question.extra) || [];

/** The rows of a question's table that are not offered to everybody. */
export const limitedRows = (question: Question): readonly Option[] =>
  'options' in question && 'table' in question.options
    ? (question.options.rowsWhen ?? []).flatMap(({ rows, when }) => rows.map((id) => ({ id, showWhen: when })))
    : [];

const limitedRow = ({ rowsWhen = [] }: TableOptions, id: string): Option | undefined => {
  const found = rowsWhen.find(({ rows }) => rows.includes(id));
  return found && { id, showWhen: found.when };
};
