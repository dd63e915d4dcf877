import { type Bundle, sentencesOf } from '../../src/words/bundle.ts';

const ENDING = /_(zero|one|two|few|many|other)$/;
const bareKey = (key: string) => key.replace(ENDING, '');
const placeholders = (sentence: string) => [...sentence.matchAll(/\{\{\s*([^},\s]+)/g)].map(([, name]) => name ?? '');

/** Each key without its plural ending, with the names of all data that any of its forms asks for. */
function askedBy(bundle: Bundle): ReadonlyMap<string, string> {
  const asked = new Map<string, Set<string>>();
  for (const [key, sentence] of sentencesOf(bundle)) {
    const names = asked.get(bareKey(key)) ?? new Set();
    for (const name of placeholders(sentence)) names.add(name);
    asked.set(bareKey(key), names);
  }
  return new Map([...asked].map(([key, names]) => [key, [...names].sort().join(' ')]));
}

/** What one language says and the other does not, and where they ask for different data. */
export function differences(one: Bundle, other: Bundle): readonly string[] {
  const [left, right] = [askedBy(one), askedBy(other)];
  return [...new Set([...left.keys(), ...right.keys()])].flatMap((key) => {
    if (!right.has(key)) return [`${key} only in the first`];
    if (!left.has(key)) return [`${key} only in the second`];
    return left.get(key) === right.get(key) ? [] : [`${key} asks for {${left.get(key)}} and {${right.get(key)}}`];
  });
}

/** Plural forms a language has and a key lacks, or the key has and the language does not. */
export function oddPlurals(language: string, bundle: Bundle): readonly string[] {
  const categories: readonly string[] = new Intl.PluralRules(language).resolvedOptions().pluralCategories;
  const needed = [...categories].sort().join(' ');
  const forms = new Map<string, string[]>();
  for (const key of sentencesOf(bundle).keys()) {
    const form = ENDING.exec(key)?.[1];
    // i18next takes `_zero` for none in any language, so that it is odd only where the language itself has it.
    if (form !== undefined && (form !== 'zero' || categories.includes('zero')))
      forms.set(bareKey(key), [...(forms.get(bareKey(key)) ?? []), form]);
  }
  return [...forms]
    .filter(([, has]) => has.sort().join(' ') !== needed)
    .map(([key, has]) => `${key} has ${has.join(' ')}`);
}
