import type { Finding } from '../../units/result.ts';
import type { Condition } from '../condition.ts';
import type { Option } from '../format.ts';
import type { PlainCondition } from '../holds.ts';
import { plainParts, subjectOf } from '../plain-parts.ts';
import type { Content } from './content.ts';
import { findingAt } from './finding-at.ts';
import { optionPlaces, type QuestionPlace, questionPlaces, rowPlaces } from './question-places.ts';

/** Answers that change nothing on purpose: they say that there is nothing to say. */
const NEUTRAL = ['none', 'not-sure', 'no-preference', 'rather-not-say', 'same', 'no', 'skipped'];

/**
 * Notes about options that change nothing downstream: no condition of the flow and no rule reads them, and neither the
 * question nor the option says who else does (`readBy`). Rows of a table are read by what the table says of them.
 *
 * Of a one-of question a single unread option is told from the rest, since they are read.
 */
export function checkUnread({ flow, flowDocument, rows }: Content): readonly Finding[] {
  if (!flow || !flowDocument || rows['rules.json'].length === 0) return [];
  const questions = questionPlaces(flow);
  const conditions: readonly Condition[] = [
    ...questions.flatMap((each) => [
      ...(each.question.askWhen ? [each.question.askWhen] : []),
      ...(each.question.noteWhen ? [each.question.noteWhen] : []),
      ...rowPlaces(each).map(({ when }) => when),
      ...optionPlaces(each).flatMap(({ option }) => option.showWhen ?? []),
    ]),
    ...flow.bounds.shortWays.map(({ when }) => when),
    ...rows['rules.json'].flatMap(({ row }) => row.when ?? []),
  ];
  const plains = conditions.flatMap(plainParts);
  const pers = new Set(rows['rules.json'].flatMap(({ row }) => (row.asks ?? []).flatMap(({ per }) => per ?? [])));
  return questions
    .filter(({ question }) => !question.readBy)
    .flatMap((each) => unreadIn(each, plains, pers))
    .map(({ place, value }) => findingAt(flowDocument, place, 'option-changes-nothing', { severity: 'note', value }));
}

type Unread = readonly { readonly place: QuestionPlace['place']; readonly value: string }[];

function unreadIn(each: QuestionPlace, plains: readonly PlainCondition[], pers: ReadonlySet<string>): Unread {
  const { question, place } = each;
  const reads = (subject: string, value?: string) =>
    plains.some((plain) => subjectOf(plain) === subject && (value === undefined || names(plain, value)));
  if (question.kind === 'against-today') {
    return question.properties.flatMap(({ id, choices }, i) => {
      const unread = choices.filter((choice) => !NEUTRAL.includes(choice) && !reads(`${question.id}-${id}`, choice));
      return unread.map((value) => ({ place: [...place, 'properties', i], value: `${id} ${value}` }));
    });
  }
  if (question.kind === 'body-map') {
    const isRead = (id: string) =>
      reads(question.id, id) ||
      ['', '-since', '-seen'].some(
        (part) => reads(`${question.id}-${id}${part}`) || pers.has(`${question.id}-${id}${part}`),
      );
    return question.regions.flatMap(({ id }, i) =>
      isRead(id) ? [] : [{ place: [...place, 'regions', i], value: id }],
    );
  }
  const unread = optionPlaces(each).filter(
    ({ option }) => !isNeutral(option) && !option.readBy && !reads(question.id, option.id),
  );
  const isToldFromTheRest = question.kind === 'one-of' && unread.length === 1 && optionPlaces(each).length > 1;
  return isToldFromTheRest ? [] : unread.map(({ option, place: at }) => ({ place: at, value: option.id }));
}

const isNeutral = ({ id, alone }: Option): boolean => alone === true || NEUTRAL.includes(id);

function names(plain: PlainCondition, value: string): boolean {
  if ('is' in plain) return plain.is === value;
  if ('anyOf' in plain) return plain.anyOf.includes(value);
  if ('includesAny' in plain) return plain.includesAny.includes(value);
  return 'includes' in plain && plain.includes === value;
}
