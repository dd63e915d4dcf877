/** As much of a language's words as naming a property takes; the full `Words` will do. The table comes before words in the house. */
export interface Speaker {
  readonly language: string;
  readonly direction: 'ltr' | 'rtl';
  say(key: string, data?: Readonly<Record<string, string | number>>): string;
  has(key: string): boolean;
  number(value: number): string;
}
