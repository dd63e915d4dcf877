import type { AnswerKind } from './answer-kinds.ts';
import type { AgainstToday } from './format.ts';
import type { PlainCondition } from './holds.ts';
import { picks } from './ways.ts';

type Properties = AgainstToday['properties'];

/**
 * Every way to give some properties one of their choices each, sorted into kinds that `conditions` do not tell apart: by
 * which of the properties they name are given at all (`includes`), and by whether all that are given have one and the
 * same word that a condition names (`anyBut`).
 */
export function choicesKinds(properties: Properties, conditions: readonly PlainCondition[]): readonly AnswerKind[] {
  const read = new Set(
    conditions.flatMap((each) =>
      'includes' in each ? [each.includes] : 'includesAny' in each ? each.includesAny : [],
    ),
  );
  const words = [...new Set(conditions.flatMap((each) => ('anyBut' in each ? [each.anyBut] : [])))];
  const parts = properties.map(({ id, choices }) => ({ id, ways: BigInt(choices.length) }));
  return picks(parts, read, 0, parts.length).flatMap(({ picked, ways }) => {
    const nothing = words.length > 0 && picked.length === 0 ? [{ example: {}, count: 1n }] : [];
    const alike = [...nothing, ...words.map((word) => allOneWord(properties, picked, read, word))];
    const count = alike.reduce((left, each) => left - each.count, ways);
    return [...alike, { example: mixed(properties, picked, read, words), count }].filter((each) => each.count > 0n);
  });
}

/** Every property that is given has this word, and at least one is given. */
function allOneWord(properties: Properties, picked: readonly string[], read: ReadonlySet<string>, word: string) {
  const offering = properties.filter(({ choices }) => choices.includes(word)).map(({ id }) => id);
  const unread = offering.filter((id) => !read.has(id));
  const ways = 2n ** BigInt(unread.length);
  const possible = picked.every((id) => offering.includes(id));
  const given = picked.length > 0 ? picked : unread.slice(0, 1);
  const count = picked.length > 0 ? ways : ways - 1n;
  return { example: Object.fromEntries(given.map((id) => [id, word])), count: possible ? count : 0n };
}

/** An answer that is not throughout one of these words: it has another one, or two different ones. */
function mixed(
  properties: Properties,
  picked: readonly string[],
  read: ReadonlySet<string>,
  words: readonly string[],
): Readonly<Record<string, string>> {
  const given = new Map<string, string>();
  const isMixed = () => words.every((word) => [...given.values()].some((each) => each !== word));
  const unread = properties.filter(({ id }) => !read.has(id));
  for (const { id, choices } of [...properties.filter((each) => picked.includes(each.id)), ...unread]) {
    if (!picked.includes(id) && isMixed()) break;
    const used = [...given.values()];
    const other = choices.find((each) => !words.includes(each)) ?? choices.find((each) => !used.includes(each));
    given.set(id, other ?? choices[0] ?? '');
  }
  return Object.fromEntries(given);
}
