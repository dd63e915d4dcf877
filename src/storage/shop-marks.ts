import { type BoxMark, withoutLastMark } from '../stock/today.ts';
import type { Store } from './store.ts';

/** What happened to boxes on one day. Marks of other days are over. `day` is `2026-11-25`. */
export async function marksOn(store: Store, day: string): Promise<readonly BoxMark[]> {
  return marksIn(await store.get('stock', 'today'), day);
}

/** The marks of one day in a record, whatever became of it: a damaged one must not keep the next tap from being written. */
const marksIn = (record: unknown, day: string): readonly BoxMark[] =>
  (Array.isArray(record) ? record : []).filter(isMark).filter(({ at }) => at.startsWith(day));

/** Whether something from outside is a mark. */
export function isMark(raw: unknown): raw is BoxMark {
  const { box, what, at } = Object(raw) as Readonly<Record<string, unknown>>;
  return (
    typeof box === 'string' &&
    (what === 'sold' || what === 'not-on-the-shelf') &&
    typeof at === 'string' &&
    isMoment(at)
  );
}

const MOMENT = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2})?$/;

/**
 * Whether a text is a local day and time that exist.
 *
 * @example
 * isMoment('2026-11-25T09:12') // true
 * isMoment('2026-02-30T09:12') // false
 */
export function isMoment(text: string): boolean {
  const time = new Date(`${text}Z`);
  return MOMENT.test(text) && !Number.isNaN(time.getTime()) && time.toISOString().startsWith(text);
}

/** One tap on a box, or the last one on it taken back. Returns the day's marks; those of other days go. */
export async function markBox(
  store: Store,
  { box, what, at }: { readonly box: string; readonly what: BoxMark['what'] | 'undo'; readonly at: string },
): Promise<readonly BoxMark[]> {
  const next = await store.update<readonly BoxMark[]>('stock', 'today', (old) => {
    const today = marksIn(old, at.slice(0, 10));
    return what === 'undo' ? withoutLastMark(today, box) : [...today, { box, what, at }];
  });
  return next ?? [];
}

/** Marks that came from another tablet beside our own, each once. */
export async function addMarks(store: Store, more: readonly BoxMark[], day: string): Promise<readonly BoxMark[]> {
  const next = await store.update<readonly BoxMark[]>('stock', 'today', (old) => {
    const all = [...marksIn(old, day), ...marksIn(more, day)];
    return [...new Map(all.map((mark) => [`${mark.at} ${mark.what} ${mark.box}`, mark])).values()];
  });
  return next ?? [];
}
