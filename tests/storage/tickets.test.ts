import { describe, expect, it } from 'vitest';
import { memoryStore } from '../../src/storage/memory-store.ts';
import { isOver, wasClockSetBack, wipeOver } from '../../src/storage/retention.ts';
import type { Store } from '../../src/storage/store.ts';
import { changeTicket, closeTicket, nextTicket, putTicket, type Ticket, ticketsOf } from '../../src/storage/tickets.ts';

const IN_ENGLISH = { fitters: 'en', visit: 'en' };
const DAY_LONG = 24 * 60;
const at = (time: string): Date => new Date(`2026-11-25T${time}:00`);
const ticket = (id: string, finishedAt: Date, more: Partial<Ticket> = {}): Ticket => ({
  id,
  word: 'maple',
  number: 1,
  startedAt: finishedAt.toISOString(),
  finishedAt: finishedAt.toISOString(),
  state: 'waiting',
  handed: false,
  visit: { flow: 'toy', flowVersion: 1, language: 'en', answers: {}, overrides: [], observation: {}, tryOns: [] },
  revision: 0,
  ...more,
});

describe('a ticket', () => {
  it('has the next number of its day, and each day begins with one', async () => {
    const store = memoryStore();
    const numbers = [];
    for (const day of ['2026-11-25', '2026-11-25', '2026-11-26'])
      numbers.push((await nextTicket(store, day, IN_ENGLISH)).number);
    expect(numbers).toEqual([1, 2, 1]);
  });

  it('waits in line: longest first, closed ones last', async () => {
    const store = memoryStore();
    await putTicket(store, ticket('late', at('11:00')));
    await putTicket(store, ticket('closed', at('09:00'), { state: 'closed' }));
    await putTicket(store, ticket('early', at('10:00')));
    expect((await ticketsOf(store)).map(({ id }) => id)).toEqual(['early', 'late', 'closed']);
  });

  it('is changed by one at a time: whoever saw an older one is told, and gets the newer', async () => {
    const store = memoryStore();
    const seen = ticket('one', at('10:00'));
    await putTicket(store, seen);
    const first = await changeTicket(store, seen, { state: 'open' });
    const second = await changeTicket(store, seen, { state: 'closed' });
    expect([first.refused, second.refused]).toEqual([false, true]);
    expect(second.ticket).toEqual(first.ticket);
    expect((await ticketsOf(store))[0]?.state).toBe('open');
  });
});

describe('a visit is kept', () => {
  const now = at('15:00');
  it.each([
    ['until now', ticket('a', at('10:00')), DAY_LONG, false],
    ['no longer than the shop says', ticket('a', at('10:00')), 60, true],
    ['as long as the shop says', ticket('a', at('14:30')), 60, false],
    ['not past its closing', ticket('a', at('14:59'), { state: 'closed' }), DAY_LONG, true],
    ['never past its day', ticket('a', new Date('2026-11-24T23:59:00')), DAY_LONG * 30, true],
    ['not when the clock was set back by hand', ticket('a', at('16:00')), DAY_LONG, true],
    ['through a nudge of the clock', ticket('a', at('15:02')), DAY_LONG, false],
  ])('%s', (_, kept, minutes, over) => {
    expect(isOver(kept, now, minutes)).toBe(over);
  });

  it('and goes from storage when it is over, alone', async () => {
    const store = memoryStore();
    await putTicket(store, ticket('old', at('10:00')));
    await putTicket(store, ticket('new', at('14:50')));
    expect(await wipeOver(store, now, 60)).toEqual(['old']);
    expect((await ticketsOf(store)).map(({ id }) => id)).toEqual(['new']);
  });

  it('not in silence when the clock was set back: it is told once', async () => {
    const store = memoryStore();
    await putTicket(store, ticket('later', at('16:00')));
    expect(await wasClockSetBack(store)).toBe(false);
    await wipeOver(store, now, DAY_LONG);
    expect(await wasClockSetBack(store)).toBe(true);
    expect(await wasClockSetBack(store)).toBe(false);
  });
});

describe('a ticket that is closed', () => {
  /** Full: it writes nothing more, and still wipes. */
  const full = (store: Store): Store => ({ ...store, update: () => Promise.reject(new Error('full')) });

  it('is wiped', async () => {
    const store = memoryStore();
    const seen = ticket('one', at('10:00'));
    await putTicket(store, seen);
    expect((await closeTicket(store, seen)).refused).toBe(false);
    expect(await ticketsOf(store)).toEqual([]);
  });

  it('is wiped from a store too full to write, and so makes room', async () => {
    const store = memoryStore();
    const seen = ticket('one', at('10:00'));
    await putTicket(store, seen);
    expect((await closeTicket(full(store), seen)).refused).toBe(false);
    expect(await ticketsOf(store)).toEqual([]);
  });

  it.each([
    ['', (store: Store) => store],
    [' not even from a full store', full],
  ])('stays when somebody changed it meanwhile%s', async (_, become) => {
    const store = memoryStore();
    const seen = ticket('one', at('10:00'));
    await putTicket(store, seen);
    await changeTicket(store, seen, { state: 'open' });
    expect((await closeTicket(become(store), seen)).refused).toBe(true);
    expect(await ticketsOf(store)).toHaveLength(1);
  });
});
