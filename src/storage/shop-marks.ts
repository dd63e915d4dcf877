import { type BoxMark, withoutLastMark } from '../stock/today.ts';
import type { Store } from './store.ts';

/** What happened to boxes on one day. Marks of other days are over. `day` is `2026-11-25`. */
export async function marksOn(store: Store, day: string): Promise<readonly BoxMark[]> {
  const kept = await store.get<readonly BoxMark[]>('stock', 'today');
  return (kept ?? []).filter(({ at }) => at.startsWith(day));
}

/** One tap on a box, or the last one on it taken back. Returns the day's marks; those of other days go. */
export async function markBox(
  store: Store,
  { box, what, at }: { readonly box: string; readonly what: BoxMark['what'] | 'undo'; readonly at: string },
): Promise<readonly BoxMark[]> {
  const next = await store.update<readonly BoxMark[]>('stock', 'today', (old) => {
    const today = (old ?? []).filter((mark) => mark.at.startsWith(at.slice(0, 10)));
    return what === 'undo' ? withoutLastMark(today, box) : [...today, { box, what, at }];
  });
  return next ?? [];
}

/** Marks that came from another tablet beside our own, each once. */
export async function addMarks(store: Store, more: readonly BoxMark[], day: string): Promise<readonly BoxMark[]> {
  const next = await store.update<readonly BoxMark[]>('stock', 'today', (old) => {
    const all = [...(old ?? []), ...more].filter(({ at }) => at.startsWith(day));
    return [...new Map(all.map((mark) => [`${mark.at} ${mark.what} ${mark.box}`, mark])).values()];
  });
  return next ?? [];
}
