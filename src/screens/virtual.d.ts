declare module 'virtual:tables' {
  import type { Tables } from '../flow/options.ts';
  export const tables: Tables;
}
declare module 'virtual:language-names' {
  /** Languages with words, by their own names. */
  export const languageNames: Readonly<Record<string, string>>;
}
