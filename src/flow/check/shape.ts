import { BODY_WORDS, YES_NO } from '../answers.ts';
import type { Question } from '../format.ts';
import type { PlainCondition } from '../holds.ts';
import { allOptions, type Tables } from '../options.ts';

/** Which values an answer or a fact can have, as far as conditions can tell. It may have more than one of these. */
export interface Shape {
  /** Single words: an option's id, `not-sure`. */
  readonly words?: readonly string[];
  /** What a list or map can include. */
  readonly parts?: readonly string[];
  /** What the keys of a map can be given: the choices of `against-today`. */
  readonly choices?: readonly string[];
  /** A number between these. */
  readonly range?: readonly [number, number];
  readonly yesNo?: true;
}

export function shapeOfAnswer(question: Question, tables: Tables): Shape {
  const options = allOptions(question, tables).map(({ id }) => id);
  switch (question.kind) {
    case 'one-of':
      return { words: options };
    case 'yes-no':
      return { words: YES_NO };
    case 'some-of':
    case 'signs':
    case 'shares':
      return { parts: options };
    case 'number': {
      const ends = question.units.flatMap(({ from, to }) => [from, to]);
      return { range: [Math.min(...ends), Math.max(...ends)], ...(question.notSure && { words: ['not-sure'] }) };
    }
    case 'against-today':
      return {
        parts: question.properties.map(({ id }) => id),
        choices: [...new Set(question.properties.flatMap(({ choices }) => choices))],
      };
    case 'body-map':
      return { parts: question.regions.map(({ id }) => id), words: BODY_WORDS };
  }
}

/** What keeps a plain condition from ever being true of a value of this shape; nothing if it can be. */
export function misfit(
  plain: PlainCondition,
  shape: Shape,
): { readonly code: string; readonly value: string } | undefined {
  if ('answered' in plain) return undefined;
  if ('includes' in plain) return among(shape.parts, plain.includes);
  if ('includesAny' in plain) {
    return plain.includesAny.map((each) => among(shape.parts, each)).find((found) => found !== undefined);
  }
  if ('anyBut' in plain) return among(shape.choices, plain.anyBut);
  if ('atLeast' in plain) return within(shape, plain.atLeast, shape.range && plain.atLeast <= shape.range[1]);
  if ('upTo' in plain) return within(shape, plain.upTo, shape.range && plain.upTo >= shape.range[0]);
  const values = 'is' in plain ? [plain.is] : plain.anyOf;
  return values.map((value) => oneValue(shape, value)).find((found) => found !== undefined);
}

function oneValue(shape: Shape, value: string | number | boolean) {
  if (typeof value === 'string') return among(shape.words, value);
  if (typeof value === 'boolean') return shape.yesNo ? undefined : never(value);
  return within(shape, value, shape.range && value >= shape.range[0] && value <= shape.range[1]);
}

const never = (value: unknown) => ({ code: 'condition-never-true', value: String(value) });
const among = (choices: readonly string[] | undefined, value: string) => {
  if (!choices) return never(value);
  return choices.includes(value) ? undefined : { code: 'value-not-among-choices', value };
};
const within = (shape: Shape, value: number, inside: boolean | undefined) =>
  shape.range && inside ? undefined : never(value);
