import type { Answer } from './answers.ts';
import type { Condition } from './condition.ts';

/** A value a condition can be asked of: an answer, or a fact. */
export type HeldValue = Answer | boolean | number;

/**
 * Whether a condition holds of some values: answers by question id, or facts by name.
 *
 * A value that is absent makes every plain condition false (and so its `not` true). A quantity is compared by its
 * value, whatever its unit. A list is never `is` or `anyOf` anything: ask whether it `includes` it. An empty map has
 * nothing in it, and so not `anyBut` anything either.
 *
 * @example
 * holds({ of: 'size', atLeast: 42 }, { size: { value: 42.5, unit: 'eu' } }); // true
 * holds({ not: { of: 'reason', is: 'worn-out' } }, {}); // true
 */
export function holds(condition: Condition, values: Readonly<Record<string, HeldValue>>): boolean {
  if ('all' in condition) return condition.all.every((part) => holds(part, values));
  if ('any' in condition) return condition.any.some((part) => holds(part, values));
  if ('not' in condition) return !holds(condition.not, values);
  const value = ownValue(values, 'answered' in condition ? condition.answered : condition.of);
  return value !== undefined && plainHolds(condition, value);
}

/** A condition that asks one thing of one value. */
export type PlainCondition = Exclude<Condition, { all: unknown } | { any: unknown } | { not: unknown }>;

/** Whether a plain condition holds of the one value it is about. */
export function plainHolds(condition: PlainCondition, value: HeldValue): boolean {
  if ('answered' in condition) return true;
  if ('includes' in condition) return includes(value, condition.includes);
  if ('includesAny' in condition) return condition.includesAny.some((id) => includes(value, id));
  if ('anyBut' in condition) return hasOther(value, condition.anyBut);
  const one = comparable(value);
  if ('is' in condition) return one === condition.is;
  if ('anyOf' in condition) return condition.anyOf.some((each) => each === one);
  if (typeof one !== 'number') return false;
  return 'atLeast' in condition ? one >= condition.atLeast : one <= condition.upTo;
}

/** `hasOwn`, since an id may be the name of something every object has. */
function ownValue(values: Readonly<Record<string, HeldValue>>, id: string): HeldValue | undefined {
  return Object.hasOwn(values, id) ? values[id] : undefined;
}

function comparable(value: HeldValue): string | number | boolean | undefined {
  if (typeof value !== 'object') return value;
  return isQuantity(value) ? value.value : undefined;
}

function includes(value: HeldValue, id: string): boolean {
  if (typeof value !== 'object') return false;
  return Array.isArray(value) ? value.includes(id) : !isQuantity(value) && Object.hasOwn(value, id);
}

function hasOther(value: HeldValue, word: string): boolean {
  if (typeof value !== 'object' || Array.isArray(value) || isQuantity(value)) return false;
  return Object.values(value).some((each) => typeof each === 'string' && each !== word);
}

/** A quantity is told from a map by its numeric value: a map's values are words or marks. */
export function isQuantity(value: HeldValue): value is { readonly value: number; readonly unit: string } {
  return typeof value === 'object' && !Array.isArray(value) && 'value' in value && typeof value.value === 'number';
}
