/**
 * Every key of a word file as a type, so that a mistyped key does not compile. Plural endings are taken off.
 *
 * ```ts
 * import type visit from '../../flows/words/en/visit.json';
 * const key: KeyOf<typeof visit> = 'finding.code-damaged';
 * ```
 */
export type KeyOf<Words> = {
  [Key in keyof Words & string]: Words[Key] extends string ? Singular<Key> : `${Key}.${KeyOf<Words[Key]>}`;
}[keyof Words & string];

type PluralEnding = 'zero' | 'one' | 'two' | 'few' | 'many' | 'other';
type Singular<Key extends string> = Key extends `${infer Bare}_${PluralEnding}` ? Bare : Key;
