import type { Store } from './store.ts';

/** Wipes every visit on this tablet, waiting or open, and the interview under way. Returns how many visits there were. */
export async function wipeVisits(store: Store): Promise<number> {
  const visits = await store.keys('visits');
  for (const key of visits) await store.delete('visits', key);
  await store.delete('draft', 'draft');
  return visits.length;
}
