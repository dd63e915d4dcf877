import type { Store } from '../../storage/store.ts';
import { changeTicket, nextTicket, putTicket, type Ticket } from '../../storage/tickets.ts';
import type { Visit } from '../../visit/visit.ts';
import { loadShop } from '../load-shop.ts';
import { dayOf } from './day.ts';

/** What the bench notes on a ticket besides the visit. */
export interface BenchNotes {
  /** Pairs set aside, with why. */
  readonly aside: readonly { readonly shoe: string; readonly reason: string }[];
  /** Shoes pulled in by hand. */
  readonly pulledIn: readonly string[];
  /** The card's code it was opened from. */
  readonly code?: string;
  /** Shoe ids in the order in which they were first shown: their letters. */
  readonly letters?: readonly string[];
  /** Names of the pairs last shown, for saying what has changed since. */
  readonly shown?: readonly string[];
}
export const NO_NOTES: BenchNotes = { aside: [], pulledIn: [] };

export interface BenchTicket extends Ticket {
  readonly bench?: BenchNotes;
}

/** What a fitter can change. */
export type Content = Pick<BenchTicket, 'visit' | 'bench'>;
export type Change = (content: Content) => Content;

export type Written =
  | { readonly is: 'written' | 'newer'; readonly ticket: BenchTicket }
  | { readonly is: 'gone' }
  /** Not saved; the change is on this screen alone. */
  | { readonly is: 'unsaved'; readonly ticket: BenchTicket };

/** Writes a change to a ticket, unless somebody else was quicker or the ticket's time is over. */
export async function writeChange(store: Store, seen: BenchTicket, change: Change): Promise<Written> {
  const next: Partial<BenchTicket> = { ...change({ visit: seen.visit, ...(seen.bench && { bench: seen.bench }) }) };
  try {
    if ((await store.get('visits', seen.id)) === undefined) return { is: 'gone' };
    const { ticket, refused } = await changeTicket(store, seen, { ...next, state: 'open' });
    return { is: refused ? 'newer' : 'written', ticket };
  } catch {
    return { is: 'unsaved', ticket: { ...seen, ...next } };
  }
}

/** A new ticket on this device for a visit from a card, or for a blank one. */
export async function newTicket(store: Store, visit: Visit, now: Date, code?: string): Promise<BenchTicket> {
  const startedAt = now.toISOString();
  // A shop that cannot be read has no language to name; the visit's own will be understood.
  const fitters = await loadShop(store).then(
    ({ language }) => language,
    () => visit.language,
  );
  const name = await nextTicket(store, dayOf(now), { fitters, visit: visit.language });
  const ticket: BenchTicket = {
    ...name,
    id: `${name.word} ${name.number}`,
    startedAt,
    finishedAt: startedAt,
    state: 'waiting',
    // A code without health answers carries the stop word in their place.
    handed: visit.hold === undefined,
    visit,
    revision: 0,
    ...(code === undefined ? {} : { bench: { ...NO_NOTES, code } }),
  };
  await putTicket(store, ticket);
  return ticket;
}

/** Minutes somebody has waited; nothing when the clock was set back since. */
export function waitedMinutes({ finishedAt }: Pick<Ticket, 'finishedAt'>, now: Date): number | undefined {
  const minutes = Math.floor((now.getTime() - new Date(finishedAt).getTime()) / 60_000);
  return minutes < 0 ? undefined : minutes;
}

/**
 * Notes that a ticket is open, which pairs it shows and by which letters, for telling later what the stock has lost. No change of
 * anybody's: the revision stays.
 */
export async function rememberShown(
  store: Store,
  seen: BenchTicket,
  shown: Required<Pick<BenchNotes, 'shown' | 'letters'>>,
): Promise<BenchTicket> {
  const noted: BenchTicket = { ...seen, state: 'open', bench: { ...(seen.bench ?? NO_NOTES), ...shown } };
  await store
    .update<BenchTicket>('visits', seen.id, (old) => (old?.revision === seen.revision ? noted : undefined))
    .catch(() => undefined);
  return noted;
}
