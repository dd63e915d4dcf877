import type { Store } from './store.ts';
import type { Ticket } from './tickets.ts';

/**
 * Whether a ticket's day is over. A visit is kept until it is closed or the day ends, or for the shorter time the
 * shop set, never longer. A clock set back makes a ticket look newer than now: it is treated as over, since its
 * age cannot be told.
 *
 * @param keepMinutes how long the shop keeps visits, at most to the end of the day
 */
export function isOver(ticket: Ticket, now: Date, keepMinutes: number): boolean {
  const finished = new Date(ticket.finishedAt);
  const age = now.getTime() - finished.getTime();
  const otherDay = finished.toDateString() !== now.toDateString();
  return ticket.state === 'closed' || otherDay || age > keepMinutes * 60_000 || age < -CLOCK_SLACK;
}

/** A clock may be nudged by a minute or two by time keeping; more than five minutes is somebody's hand. From memory. */
const CLOCK_SLACK = 5 * 60_000;

/** Removes what is over; returns the ids removed. */
export async function wipeOver(store: Store, now: Date, keepMinutes: number): Promise<readonly string[]> {
  const over = (await store.all<Ticket>('visits')).filter((ticket) => isOver(ticket, now, keepMinutes));
  for (const ticket of over) await store.delete('visits', ticket.id);
  return over.map((ticket) => ticket.id);
}
