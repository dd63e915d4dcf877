/**
 * What the range lacks, added up over closed visits. Sums only: no visit, day or person can be read back from them.
 */
export interface Gaps {
  readonly visits: number;
  /** From the first question to closing, summed; with the visits whose time is known. */
  readonly minutes: { readonly sum: number; readonly visits: number };
  /** How often each thing happened. */
  readonly counts: readonly Count[];
}

/** Words: `lacks.<topic>`, and for the row itself `lacks.<topic>.<what>` or the attribute's own words. */
export interface Count {
  readonly topic: GapTopic;
  /** An attribute with its direction (`drop-less`: lower wanted), a must (`safety-marks slip`), a size, a reason. */
  readonly what: string;
  /** It followed from a health answer: shown from five on only. */
  readonly health: boolean;
  readonly count: number;
}

export const GAP_TOPICS = ['need', 'must', 'size', 'first-pair', 'no-sale', 'other-footwear'] as const;
export type GapTopic = (typeof GAP_TOPICS)[number];

/** Nothing yet. */
export const NO_GAPS: Gaps = { visits: 0, minutes: { sum: 0, visits: 0 }, counts: [] };

/**
 * Adds sums up: visits of a day, days of a season, two tablets. The order does not matter.
 *
 * @example
 * addUp([oneVisit, anotherVisit]).visits // 2
 */
export function addUp(all: readonly Gaps[]): Gaps {
  const counts = new Map<string, Count>();
  for (const each of all.flatMap((gaps) => gaps.counts)) {
    const key = `${GAP_TOPICS.indexOf(each.topic)} ${each.what} ${each.health}`;
    counts.set(key, { ...each, count: each.count + (counts.get(key)?.count ?? 0) });
  }
  const sum = (of: (gaps: Gaps) => number) => all.reduce((total, gaps) => total + of(gaps), 0);
  return {
    visits: sum(({ visits }) => visits),
    minutes: { sum: sum(({ minutes }) => minutes.sum), visits: sum(({ minutes }) => minutes.visits) },
    counts: [...counts].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, count]) => count),
  };
}
