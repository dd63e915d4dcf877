import type { Condition } from '../condition.ts';
import { type HeldValue, type PlainCondition, plainHolds } from '../holds.ts';
import { plainParts, subjectOf } from '../plain-parts.ts';
import type { Shape } from './shape.ts';

/**
 * Whether any values at all make a condition hold, each subject taking only the values its shape allows.
 *
 * Subjects are tried one after another and a branch is left as soon as the condition is decided, so long conditions
 * stay quick. Values that exclude each other across subjects are not known here.
 */
export function canHold(condition: Condition, shapeOf: (subject: string) => Shape | undefined): boolean {
  const plains = plainParts(condition);
  const subjects = [...new Set(plains.map(subjectOf))];
  const valuesOf = subjects.map((subject) => {
    const about = plains.filter((plain) => subjectOf(plain) === subject);
    return tellingValues(about, shapeOf(subject) ?? {});
  });
  const tried = new Map<string, HeldValue | undefined>();
  const search = (depth: number): boolean => {
    const decided = decide(condition, tried);
    if (decided !== undefined) return decided;
    const subject = subjects[depth];
    if (subject === undefined) return false;
    const found = (valuesOf[depth] ?? []).some((value) => {
      tried.set(subject, value);
      return search(depth + 1);
    });
    tried.delete(subject);
    return found;
  };
  return search(0);
}

/** True or false where the values tried so far decide it, else nothing. */
function decide(condition: Condition, tried: ReadonlyMap<string, HeldValue | undefined>): boolean | undefined {
  if ('all' in condition) return every(condition.all.map((part) => decide(part, tried)));
  if ('any' in condition) return negated(every(condition.any.map((part) => negated(decide(part, tried)))));
  if ('not' in condition) return negated(decide(condition.not, tried));
  const subject = subjectOf(condition);
  if (!tried.has(subject)) return undefined;
  const value = tried.get(subject);
  return value !== undefined && plainHolds(condition, value);
}

const negated = (decided: boolean | undefined) => (decided === undefined ? undefined : !decided);
const every = (parts: readonly (boolean | undefined)[]) => {
  if (parts.includes(false)) return false;
  return parts.includes(undefined) ? undefined : true;
};

/** One value of each sort that the conditions can tell apart, and none at all. */
function tellingValues(about: readonly PlainCondition[], shape: Shape): readonly (HeldValue | undefined)[] {
  const named = about.flatMap<unknown>((plain) => ('is' in plain ? [plain.is] : 'anyOf' in plain ? plain.anyOf : []));
  const words = (shape.words ?? []).filter((word) => named.includes(word));
  const other = (shape.words ?? []).find((word) => !named.includes(word));
  return [
    ...words,
    ...(other === undefined ? [] : [other]),
    ...(shape.yesNo ? [true, false] : []),
    ...(shape.range ? tellingNumbers(about, shape.range) : []),
    ...(shape.parts ? tellingLists(about, shape.parts) : []),
    undefined,
  ];
}

function tellingNumbers(about: readonly PlainCondition[], [from, to]: readonly [number, number]): readonly number[] {
  const named = about.flatMap((plain) => {
    if ('atLeast' in plain) return [plain.atLeast];
    if ('upTo' in plain) return [plain.upTo];
    if ('is' in plain) return typeof plain.is === 'number' ? [plain.is] : [];
    return 'anyOf' in plain ? plain.anyOf.filter((each) => typeof each === 'number') : [];
  });
  const points = [...new Set([from, ...named, to])].filter((n) => n >= from && n <= to).sort((a, b) => a - b);
  return points.flatMap((point, i) => [point, (point + (points[i + 1] ?? point)) / 2]);
}

/** Parts that the same conditions name are one sort, and one of them stands for all. */
function tellingLists(about: readonly PlainCondition[], parts: readonly string[]): readonly (readonly string[])[] {
  const sorts = new Map<string, string>();
  for (const part of parts) {
    const naming = about.filter((plain) => namesPart(plain, part)).map((plain) => about.indexOf(plain));
    if (naming.length > 0 && !sorts.has(naming.join())) sorts.set(naming.join(), part);
  }
  let lists: readonly (readonly string[])[] = [[]];
  for (const part of sorts.values()) lists = [...lists, ...lists.map((l) => [...l, part])];
  return lists;
}

function namesPart(plain: PlainCondition, part: string): boolean {
  if ('includes' in plain) return plain.includes === part;
  return 'includesAny' in plain && plain.includesAny.includes(part);
}
