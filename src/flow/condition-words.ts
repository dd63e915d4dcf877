import { listText } from '../units/list-text.ts';
import type { Condition } from './condition.ts';
import type { FlowWords } from './flow-words.ts';
import type { PlainCondition } from './holds.ts';

/** How a question and one of its values are called. */
export interface Naming {
  question(id: string): string;
  value(question: string, id: string | number | boolean): string;
}

/** A condition as a fitter would say it: `“reason” is none of “Same again”, “Just my size”`. */
export function conditionWords(condition: Condition, words: FlowWords, naming: Naming): string {
  if ('all' in condition) return joined(condition.all, 'map.and', words, naming);
  if ('any' in condition) return joined(condition.any, 'map.or', words, naming);
  if (!('not' in condition)) return plainWords(condition, 'map.', words, naming);
  const { not } = condition;
  if ('is' in not || 'anyOf' in not || 'includes' in not || 'includesAny' in not)
    return plainWords(not, 'map.not-', words, naming);
  return words.say('map.not', { condition: conditionWords(not, words, naming) });
}

function joined(parts: readonly Condition[], key: string, words: FlowWords, naming: Naming): string {
  const said = parts.map((part) => {
    const text = conditionWords(part, words, naming);
    return 'all' in part || 'any' in part ? `(${text})` : text;
  });
  return said.reduce((first, second) => words.say(key, { first, second }));
}

function plainWords(plain: PlainCondition, prefix: string, words: FlowWords, naming: Naming): string {
  if ('answered' in plain) return words.say(`${prefix}answered`, { of: naming.question(plain.answered) });
  const of = naming.question(plain.of);
  const value = (each: string | number | boolean) => naming.value(plain.of, each);
  if ('is' in plain) return words.say(`${prefix}is`, { of, value: value(plain.is) });
  const quoted = (several: readonly (string | number)[]) =>
    listText(
      several.map((each) => words.say('map.quoted', { value: value(each) })),
      words.language,
    );
  if ('anyOf' in plain) return words.say(`${prefix}any-of`, { of, values: quoted(plain.anyOf) });
  if ('includesAny' in plain) return words.say(`${prefix}includes-any`, { of, values: quoted(plain.includesAny) });
  if ('includes' in plain) return words.say(`${prefix}includes`, { of, value: value(plain.includes) });
  if ('anyBut' in plain) return words.say(`${prefix}any-but`, { of, value: value(plain.anyBut) });
  if ('atLeast' in plain) return words.say(`${prefix}at-least`, { of, value: words.number(plain.atLeast) });
  return words.say(`${prefix}up-to`, { of, value: words.number(plain.upTo) });
}
