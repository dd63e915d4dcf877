import type { Visit } from '../visit/visit.ts';
import type { Store } from './store.ts';

const STATES = ['waiting', 'open', 'closed'] as const;

/** A finished interview, waiting under a word and a number that stand for the customer, who gives no name. */
export interface Ticket {
  /** `maple 14`. */
  readonly id: string;
  readonly word: string;
  readonly number: number;
  /** ISO time, local clock. */
  readonly startedAt: string;
  readonly finishedAt: string;
  readonly state: (typeof STATES)[number];
  /** The customer tapped "Hand to the fitter": health answers stay until the ticket closes. */
  readonly handed: boolean;
  readonly visit: Visit;
  /** Raised at each change; a writer that saw an older one is told. */
  readonly revision: number;
}

/** What its ticket's word is chosen by: the language of the fitters, who call it out, and that of the visit's card. */
export interface Spoken {
  readonly fitters: string;
  readonly visit: string;
}

/**
 * The next ticket of the day: the number counts up, the word follows it round. The words come with the first ticket,
 * not with the first screen; where they cannot be had, one that every kiosk knows stands in.
 */
export async function nextTicket(
  store: Store,
  today: string,
  spoken: Spoken,
): Promise<{ word: string; number: number }> {
  const counted = await store.update<{ day: string; last: number }>('shop', 'ticket-count', (old) => ({
    day: today,
    last: old?.day === today && Number.isSafeInteger(old.last) ? old.last + 1 : 1,
  }));
  const number = counted?.last ?? 1;
  return { number, word: await ticketWord(number, spoken) };
}

/** The word that goes with a number. */
export const ticketWord = (number: number, { fitters, visit }: Spoken): Promise<string> =>
  import('./ticket-words.ts').then(
    ({ ticketWords }) => {
      const words = ticketWords(fitters, visit);
      return words[(number * 7) % words.length] ?? ANY_WORD;
    },
    () => ANY_WORD,
  );

const ANY_WORD = 'maple';

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

/**
 * Whether a kept record is a ticket that this kiosk can read. One that was kept by a later kiosk says so by its
 * `format`, which the first tickets have none of; it stays until its day is over, for the kiosk that can read it.
 */
export function isTicket(record: unknown): record is Ticket {
  const { format, id, word, number, startedAt, finishedAt, state, visit, revision } = fieldsOf(record);
  const { flow, language, answers, overrides, observation, tryOns } = fieldsOf(visit);
  return (
    format === undefined &&
    [id, word, flow, language].every((text) => typeof text === 'string') &&
    [number, revision].every(Number.isSafeInteger) &&
    [startedAt, finishedAt].every((time) => typeof time === 'string' && !Number.isNaN(Date.parse(time))) &&
    STATES.some((each) => each === state) &&
    [answers, observation].every((group) => group === Object(group) && !Array.isArray(group)) &&
    [overrides, tryOns].every(Array.isArray)
  );
}

const fieldsOf = (record: unknown) => Object(record) as Readonly<Record<string, unknown>>;

/** How many visits are kept here that this kiosk cannot read. */
export const strangeVisits = async (store: Store): Promise<number> =>
  (await store.all('visits')).filter((record) => !isTicket(record)).length;

/** Longest waiting first; closed ones last. Records that are no tickets are passed over. */
export async function ticketsOf(store: Store): Promise<readonly Ticket[]> {
  const all = (await store.all('visits')).filter(isTicket);
  const rank = (t: Ticket) => (t.state === 'closed' ? 1 : 0);
  return [...all].sort(
    (a, b) => rank(a) - rank(b) || a.finishedAt.localeCompare(b.finishedAt) || a.id.localeCompare(b.id),
  );
}
