declare module 'virtual:tables' {
  import type { Tables } from '../flow/options.ts';
  export const tables: Tables;
}
