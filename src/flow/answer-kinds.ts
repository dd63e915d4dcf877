import { type Answer, BODY_WHEN, BODY_WORDS, SHARES, YES_NO } from './answers.ts';
import { choicesKinds } from './choices-kinds.ts';
import type { NumberQuestion, Option, Question } from './format.ts';
import { type PlainCondition, plainHolds } from './holds.ts';
import { type Part, picks } from './ways.ts';

/** Some answers to a question that the given conditions do not tell apart: one of them, and how many there are. */
export interface AnswerKind {
  readonly example: Answer;
  readonly count: bigint;
}

/**
 * Every answer a question can be given, sorted into kinds that `conditions` do not tell apart.
 *
 * What counts as one answer: one option; one set of options (order does not matter, an option that stands alone stands
 * alone); one share for each option chosen; one choice, or none, for each property; since when and whether seen for each
 * region marked. For a number, every value of one unit that the conditions do not tell apart is one answer.
 */
export function answerKinds(
  question: Question,
  offered: readonly Option[],
  conditions: readonly PlainCondition[],
): readonly AnswerKind[] {
  const read = new Set(conditions.flatMap((each) => ('includes' in each ? [each.includes] : [])));
  const gathered = conditions.flatMap((each) => ('includesAny' in each ? [each.includesAny] : []));
  switch (question.kind) {
    case 'one-of':
      return offered.map(({ id }) => one(id));
    case 'yes-no':
      return YES_NO.map(one);
    case 'some-of':
    case 'signs': {
      const most = question.kind === 'some-of' ? question.most : undefined;
      return [...sets(offered, read, gathered, 1n, most, (ids) => ids), ...alone(offered).map(({ id }) => one([id]))];
    }
    case 'shares': {
      const asMap = (ids: readonly string[]) => Object.fromEntries(ids.map((id) => [id, SHARES[0]]));
      const each = BigInt(SHARES.length);
      return [
        ...sets(offered, read, gathered, each, undefined, asMap),
        ...alone(offered).map(({ id }) => one({ [id]: SHARES[0] })),
      ];
    }
    case 'number':
      return numbers(question, conditions);
    case 'against-today':
      return choicesKinds(question.properties, conditions);
    case 'body-map': {
      const parts = question.regions.map(({ id }) => ({ id, ways: BigInt(BODY_WHEN.length * 2) }));
      return [...maps(parts, read, gathered, () => ({ when: BODY_WHEN[0], seen: false })), ...BODY_WORDS.map(one)];
    }
  }
}

const one = (example: Answer): AnswerKind => ({ example, count: 1n });
const alone = (offered: readonly Option[]) => offered.filter((option) => option.alone);

/** At least one option that does not stand alone. The example names only those that are read, or any if none is. */
function sets(
  offered: readonly Option[],
  read: ReadonlySet<string>,
  gathered: readonly (readonly string[])[],
  ways: bigint,
  most: number | undefined,
  asAnswer: (ids: readonly string[]) => Answer,
): readonly AnswerKind[] {
  const parts = offered.filter((option) => !option.alone).map(({ id }) => ({ id, ways }));
  const unread = parts.find(({ id }) => !read.has(id) && !gathered.some((set) => set.includes(id)));
  return picks(parts, read, 1, most ?? parts.length, gathered).map(({ picked, ways: count }) => ({
    example: asAnswer(picked.length > 0 || !unread ? picked : [unread.id]),
    count,
  }));
}

function maps(
  parts: readonly Part[],
  read: ReadonlySet<string>,
  gathered: readonly (readonly string[])[],
  markOf: (id: string) => unknown,
): readonly AnswerKind[] {
  return picks(parts, read, 0, parts.length, gathered).map(({ picked, ways }) => ({
    example: Object.fromEntries(picked.map((id) => [id, markOf(id)])) as Answer,
    count: ways,
  }));
}

function numbers(question: NumberQuestion, conditions: readonly PlainCondition[]): readonly AnswerKind[] {
  const quantities = question.units.flatMap(({ id, from, to }) => {
    const told = new Map<string, Answer>();
    for (const value of tellingValues(conditions, from, to)) {
      const quantity = { value, unit: id };
      const truth = conditions.map((each) => plainHolds(each, quantity)).join();
      if (!told.has(truth)) told.set(truth, quantity);
    }
    return [...told.values()].map(one);
  });
  return question.notSure ? [...quantities, one('not-sure')] : quantities;
}

/** The range's ends, every value a condition names within it, and one value between each two of those. */
function tellingValues(conditions: readonly PlainCondition[], from: number, to: number): readonly number[] {
  const named = conditions.flatMap(namedNumbers).filter((value) => value > from && value < to);
  const points = [...new Set([from, ...named, to])].sort((a, b) => a - b);
  return points.flatMap((value, i) => (i === 0 ? [value] : [((points[i - 1] ?? value) + value) / 2, value]));
}

function namedNumbers(condition: PlainCondition): readonly number[] {
  if ('atLeast' in condition) return [condition.atLeast];
  if ('upTo' in condition) return [condition.upTo];
  if ('is' in condition) return typeof condition.is === 'number' ? [condition.is] : [];
  return 'anyOf' in condition ? condition.anyOf.filter((each) => typeof each === 'number') : [];
}
