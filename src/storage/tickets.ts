import type { Visit } from '../visit/visit.ts';
import type { Store } from './store.ts';

/** A finished interview, waiting under a word and a number that stand for the customer, who gives no name. */
export interface Ticket {
  /** `maple 14`. */
  readonly id: string;
  readonly word: string;
  readonly number: number;
  /** ISO time, local clock. */
  readonly startedAt: string;
  readonly finishedAt: string;
  readonly state: 'waiting' | 'open' | 'closed';
  /** The customer tapped "Hand to the fitter": health answers stay until the ticket closes. */
  readonly handed: boolean;
  readonly visit: Visit;
  /** Raised at each change; a writer that saw an older one is told. */
  readonly revision: number;
}

/** Neutral words that are easy to say across a counter. */
export const TICKET_WORDS = [
  'maple',
  'heron',
  'pebble',
  'willow',
  'lantern',
  'otter',
  'harbour',
  'thistle',
  'bramble',
  'kettle',
  'marble',
  'meadow',
  'copper',
  'linnet',
  'saddle',
  'tulip',
] as const;

/** The next ticket of the day: the number counts up, the word follows it round. */
export async function nextTicket(store: Store, today: string): Promise<{ word: string; number: number }> {
  const counted = await store.update<{ day: string; last: number }>('shop', 'ticket-count', (old) => ({
    day: today,
    last: old?.day === today ? old.last + 1 : 1,
  }));
  const number = counted?.last ?? 1;
  return { number, word: TICKET_WORDS[(number * 7) % TICKET_WORDS.length] ?? TICKET_WORDS[0] };
}

export const putTicket = (store: Store, ticket: Ticket): Promise<void> => store.put('visits', ticket.id, ticket);

/**
 * Writes a ticket only if nobody else changed it since it was read.
 *
 * @returns the ticket as written, or the newer one that stands in the way
 */
export async function changeTicket(
  store: Store,
  seen: Ticket,
  change: Partial<Ticket>,
): Promise<{ ticket: Ticket; refused: boolean }> {
  let refused = false;
  let standing: Ticket = seen;
  await store.update<Ticket>('visits', seen.id, (old) => {
    if (old && old.revision !== seen.revision) {
      refused = true;
      standing = old;
      return undefined;
    }
    standing = { ...seen, ...change, id: seen.id, revision: seen.revision + 1 };
    return standing;
  });
  return { ticket: standing, refused };
}

/**
 * Closes a ticket and wipes it, unless somebody else changed it since it was read. A store too full to write may still
 * wipe, and closing is what makes room in it.
 */
export async function closeTicket(store: Store, seen: Ticket): Promise<{ ticket: Ticket; refused: boolean }> {
  const { ticket, refused } = await changeTicket(store, seen, { state: 'closed' }).catch(async () => {
    const standing = (await store.get<Ticket>('visits', seen.id)) ?? seen;
    return { ticket: standing, refused: standing.revision !== seen.revision };
  });
  if (!refused) await store.delete('visits', seen.id);
  return { ticket, refused };
}

/** Longest waiting first; closed ones last. */
export async function ticketsOf(store: Store): Promise<readonly Ticket[]> {
  const all = await store.all<Ticket>('visits');
  const rank = (t: Ticket) => (t.state === 'closed' ? 1 : 0);
  return [...all].sort(
    (a, b) => rank(a) - rank(b) || a.finishedAt.localeCompare(b.finishedAt) || a.id.localeCompare(b.id),
  );
}
