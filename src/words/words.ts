/** Data put into a sentence: `{{name}}` in the words. `count` chooses the plural. */
export type WordData = Readonly<Record<string, string | number>>;

/**
 * The words of one language, as every step of the line receives them.
 *
 * Keys are dotted paths into the merged word files (`question.reason.ask`). A missing key throws: a hole in a
 * language is a bug that `check` finds first, never an empty or foreign sentence on a card.
 */
export interface Words {
  readonly language: string;
  readonly direction: 'ltr' | 'rtl';
  say(key: string, data?: WordData): string;
  has(key: string): boolean;
  /** A number as this language writes it. */
  number(value: number, fractionDigits?: number): string;
  /** An ISO date (`2026-11-25`) as this language writes it. */
  date(iso: string): string;
}
