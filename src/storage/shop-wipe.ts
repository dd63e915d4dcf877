import type { Store } from './store.ts';
import type { Ticket } from './tickets.ts';

/** Wipes every visit on this tablet, waiting or open, and the interview under way. Returns how many visits there were. */
export async function wipeVisits(store: Store): Promise<number> {
  const visits = await store.all<Ticket>('visits');
  for (const { id } of visits) await store.delete('visits', id);
  await store.delete('draft', 'draft');
  return visits.length;
}
