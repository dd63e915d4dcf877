/**
 * Conditions: the closed set that routes (over answers) and rules (over facts) are written in.
 *
 * They are data, never code, so that every one can be printed, drawn and analysed.
 */
export type Condition =
  /** The value is exactly this. */
  | { readonly of: string; readonly is: string | number | boolean }
  /** The value is one of these. */
  | { readonly of: string; readonly anyOf: readonly (string | number)[] }
  /** A list holds this, or a map has this key (`shares`, `body-map`). */
  | { readonly of: string; readonly includes: string }
  /** A list or map holds at least one of these: one bit to carry along where naming each would be many. */
  | { readonly of: string; readonly includesAny: readonly string[] }
  /** A map (`against-today`) holds a word other than this: a wish, where it is not `no-preference` throughout. */
  | { readonly of: string; readonly anyBut: string }
  /** A number (or a quantity's value) is this or more. */
  | { readonly of: string; readonly atLeast: number }
  /** A number (or a quantity's value) is this or less. */
  | { readonly of: string; readonly upTo: number }
  /** There is a value at all; `not-sure` and `no-preference` count as values. */
  | { readonly answered: string }
  | { readonly all: readonly Condition[] }
  | { readonly any: readonly Condition[] }
  | { readonly not: Condition };
