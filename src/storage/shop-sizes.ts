import { addTallies, type SizeTally, sizeTallies } from '../sizing/suggest-offset.ts';
import type { TryOn } from '../visit/visit.ts';
import type { Store } from './store.ts';

/** Sums alone, by model: no visit can be read back. */
const KEY = 'sizes';

/** Adds what one closed visit found about how models run. */
export async function addSizes(store: Store, tried: readonly Pick<TryOn, 'shoe' | 'size'>[]): Promise<void> {
  const own = sizeTallies(tried);
  if (own.length === 0) return;
  await store.update<readonly SizeTally[]>('tallies', KEY, (old) => addTallies([...(old ?? []), ...own]));
}

export const keptSizes = async (store: Store): Promise<readonly SizeTally[]> =>
  (await store.get<readonly SizeTally[]>('tallies', KEY)) ?? [];
