/**
 * Where the tablet keeps things: a few areas of keyed records. The browser's database when it may be used,
 * memory when it may not (private window, storage refused), so that a visit can always go on.
 */
export const AREAS = ['draft', 'visits', 'shop', 'stock', 'tallies'] as const;
export type Area = (typeof AREAS)[number];

export interface Store {
  /** `false`: nothing survives a reload, and the shop is told so. */
  readonly lasting: boolean;
  get<T>(area: Area, key: string): Promise<T | undefined>;
  put(area: Area, key: string, value: unknown): Promise<void>;
  delete(area: Area, key: string): Promise<void>;
  all<T>(area: Area): Promise<readonly T[]>;
  /** What the area's records are kept under: a damaged one need not tell it itself. */
  keys(area: Area): Promise<readonly string[]>;
  /** Reads and writes in one step, so that two tabs cannot both win. `change` returns the new value, or `undefined` to leave it. */
  update<T>(area: Area, key: string, change: (old: T | undefined) => T | undefined): Promise<T | undefined>;
}
