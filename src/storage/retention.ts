import type { Store } from './store.ts';
import type { Ticket } from './tickets.ts';

/**
 * Whether a ticket's day is over. A visit is kept until it is closed or the day ends, or for the shorter time the
 * shop set, never longer. A clock set back makes a ticket look newer than now: it is treated as over, since its
 * age cannot be told. So is a damaged record that does not say when it was finished.
 *
 * @param keepMinutes how long the shop keeps visits, at most to the end of the day
 */
export function isOver(ticket: Ticket, now: Date, keepMinutes: number): boolean {
  const finished = finishOf(ticket);
  const age = now.getTime() - finished.getTime();
  const otherDay = finished.toDateString() !== now.toDateString();
  return ticket.state === 'closed' || otherDay || age > keepMinutes * 60_000 || isFromLater(ticket, now);
}

/** Finished later than it is now: somebody set the clock back since. */
const isFromLater = (ticket: Ticket, now: Date): boolean => now.getTime() - finishOf(ticket).getTime() < -CLOCK_SLACK;

const finishOf = ({ finishedAt }: Ticket): Date => new Date(typeof finishedAt === 'string' ? finishedAt : Number.NaN);

/** A clock may be nudged by a minute or two by time keeping; more than five minutes is somebody's hand. From memory. */
const CLOCK_SLACK = 5 * 60_000;

/** Removes what is over; returns the ids removed. What went because of the clock is noted, for `wasClockSetBack`. */
export async function wipeOver(store: Store, now: Date, keepMinutes: number): Promise<readonly string[]> {
  const gone: string[] = [];
  let later = false;
  for (const key of await store.keys('visits')) {
    const ticket = Object(await store.get('visits', key)) as Ticket;
    if (!isOver(ticket, now, keepMinutes)) continue;
    await store.delete('visits', key);
    gone.push(key);
    later ||= ticket.state !== 'closed' && isFromLater(ticket, now);
  }
  if (later) await store.put('shop', CLOCK_NOTE, true).catch(() => undefined);
  return gone;
}

const CLOCK_NOTE = 'clock-set-back';

/** Whether visits went because the clock was set back, and nobody was told yet. Asking is being told. */
export async function wasClockSetBack(store: Store): Promise<boolean> {
  if ((await store.get('shop', CLOCK_NOTE)) !== true) return false;
  await store.delete('shop', CLOCK_NOTE);
  return true;
}
