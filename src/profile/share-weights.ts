/** What "mostly", "some" and "now and then" stand for where several things are blended. Source: common practice. */
const SHARE_WEIGHTS: ReadonlyMap<string, number> = new Map([
  ['mostly', 1],
  ['some', 0.6],
  ['now-and-then', 0.3],
]);

/** How much of the time goes to the second activity; the rest goes to the main one. Source: common practice. */
const SECOND_SHARES: ReadonlyMap<string, number> = new Map([
  ['half', 0.5],
  ['some', 0.3],
  ['now-and-then', 0.15],
]);

/** The weight of a share, 0 for anything that is not one. */
export const shareWeight = (share: unknown): number => (typeof share === 'string' && SHARE_WEIGHTS.get(share)) || 0;

/** The second activity's share of the time, 0 to 0.5; `some` where nobody said. */
export const secondShare = (share: unknown): number => (typeof share === 'string' && SECOND_SHARES.get(share)) || 0.3;
