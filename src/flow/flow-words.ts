/** What drawing a flow needs of a language; `Words` has all of it. */
export interface FlowWords {
  readonly language: string;
  say(key: string, data?: Readonly<Record<string, string | number>>): string;
  has(key: string): boolean;
  number(value: number): string;
}
