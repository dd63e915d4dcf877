import type { Count, Gaps } from './gaps.ts';

/** Counts that follow from health answers stay hidden below this, so that no single person shows. */
export const SHOWN_FROM = 5;

/**
 * The rows a shop may see, the most frequent first within each topic. A health row below five is left out altogether:
 * even "fewer than five" would tell that there was one. A hidden reason for not buying is counted under `other`, since
 * the reasons add up to a total that is shown.
 */
export function shownGaps({ counts }: Gaps): readonly Count[] {
  const hidden = (row: Count) => row.health && row.count < SHOWN_FROM;
  const folded = counts
    .filter((row) => hidden(row) && row.topic === 'no-sale')
    .reduce((sum, row) => sum + row.count, 0);
  const shown = counts.filter((row) => !hidden(row));
  const isOther = ({ topic, what, health }: Count) => topic === 'no-sale' && what === 'other' && !health;
  const rows =
    folded === 0
      ? shown
      : shown.some(isOther)
        ? shown.map((row) => (isOther(row) ? { ...row, count: row.count + folded } : row))
        : [...shown, { topic: 'no-sale', what: 'other', health: false, count: folded } as const];
  const topics = [...new Set(rows.map(({ topic }) => topic))];
  return topics.flatMap((topic) => rows.filter((row) => row.topic === topic).sort((a, b) => b.count - a.count));
}

/** Minutes of a visit on average; nothing until one was timed. */
export function usualMinutes({ minutes }: Gaps): number | undefined {
  return minutes.visits === 0 ? undefined : Math.round(minutes.sum / minutes.visits);
}
