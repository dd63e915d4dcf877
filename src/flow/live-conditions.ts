import type { Condition } from './condition.ts';
import type { Option, Question } from './format.ts';
import { type PlainCondition, plainHolds } from './holds.ts';
import { allOptions, type Tables } from './options.ts';
import { plainParts, subjectOf } from './plain-parts.ts';

/**
 * What still matters of the answers given so far: which plain conditions that a later question reads are true. One bit
 * for each, so that two visitors whom nothing later can tell apart are one number.
 */
export interface LiveConditions {
  /** The plain conditions on one question. */
  on(question: string): readonly PlainCondition[];
  /** The bits that an answer to a question makes true. */
  bitsOf(question: string, example: Parameters<typeof plainHolds>[1]): bigint;
  /** The bits that something after the question at this place in the flow still reads. */
  after(index: number): bigint;
  /** A condition over answers, decided by the bits alone. */
  holds(condition: Condition, bits: bigint): boolean;
}

/** Gathers every plain condition in the questions, and in `further` ones that are read at the end. */
export function liveConditions(
  questions: readonly Question[],
  tables: Tables,
  further: readonly Condition[],
): LiveConditions {
  const found = new Map<string, { readonly plain: PlainCondition; readonly bit: bigint; lastRead: number }>();
  const read = (condition: Condition, index: number) => {
    for (const plain of plainParts(condition)) {
      const key = JSON.stringify(plain);
      const known = found.get(key);
      if (known) known.lastRead = index;
      else found.set(key, { plain, bit: 1n << BigInt(found.size), lastRead: index });
    }
  };
  questions.forEach((question, index) => {
    for (const condition of conditionsOf(question, tables)) read(condition, index);
  });
  for (const condition of further) read(condition, questions.length);
  const all = [...found.values()];
  const sum = (some: readonly { readonly bit: bigint }[]) => some.reduce((bits, { bit }) => bits | bit, 0n);
  const on = new Map<string, typeof all>();
  for (const each of all) on.set(subjectOf(each.plain), [...(on.get(subjectOf(each.plain)) ?? []), each]);
  return {
    on: (question) => (on.get(question) ?? []).map(({ plain }) => plain),
    bitsOf: (question, value) => sum((on.get(question) ?? []).filter(({ plain }) => plainHolds(plain, value))),
    after: (index) => sum(all.filter(({ lastRead }) => lastRead > index)),
    holds: (condition, bits) =>
      decide(condition, (plain) => ((found.get(JSON.stringify(plain))?.bit ?? 0n) & bits) !== 0n),
  };
}

function conditionsOf(question: Question, tables: Tables): readonly Condition[] {
  const shown = allOptions(question, tables).flatMap((option: Option) => option.showWhen ?? []);
  return question.askWhen ? [question.askWhen, ...shown] : shown;
}

function decide(condition: Condition, isTrue: (plain: PlainCondition) => boolean): boolean {
  if ('all' in condition) return condition.all.every((part) => decide(part, isTrue));
  if ('any' in condition) return condition.any.some((part) => decide(part, isTrue));
  if ('not' in condition) return !decide(condition.not, isTrue);
  return isTrue(condition);
}
