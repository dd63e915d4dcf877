/** `brief` names things in a row, `and` joins them in a sentence, `or` says that any of them will do. */
const KINDS = {
  brief: { type: 'unit', style: 'short' },
  and: { type: 'conjunction', style: 'long' },
  or: { type: 'disjunction', style: 'long' },
} as const satisfies Record<string, Intl.ListFormatOptions>;

/**
 * Several things said as one, joined as the language joins them: its own comma and its own "and".
 *
 * @example
 * ```ts
 * listText(['A', 'B', 'C'], 'de') // 'A, B und C'
 * listText(['A', 'B'], 'ar', 'and') // 'A وB'
 * listText(['hall', 'mat'], 'en', 'or') // 'hall or mat'
 * ```
 */
export const listText = (things: readonly string[], language: string, kind: keyof typeof KINDS = 'brief'): string =>
  new Intl.ListFormat(language, KINDS[kind]).format(things);
