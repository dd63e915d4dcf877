import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import {
  type BenchTicket,
  NO_NOTES,
  newTicket,
  rememberShown,
  waitedMinutes,
  writeChange,
} from '../../../src/screens/fitter/bench-ticket.ts';
import { memoryStore } from '../../../src/storage/memory-store.ts';
import { ticketWords } from '../../../src/storage/ticket-words.ts';
import { visit } from './toy-visit.ts';

const NOW = new Date('2026-11-25T10:00:00Z');
const setTo =
  (value: string) =>
  ({ visit: old, ...rest }: Pick<BenchTicket, 'visit' | 'bench'>) => ({
    ...rest,
    visit: { ...old, overrides: [...old.overrides, { question: 'floor', value, by: 'LT', reason: 'seen' }] },
  });

describe('two tabs on one ticket', () => {
  it('tell the second writer, show the first one’s change, and lose neither', async () => {
    const store = memoryStore();
    const seen = await newTicket(store, visit, NOW);
    const first = await writeChange(store, seen, setTo('grass'));
    const second = await writeChange(store, seen, setTo('sand'));
    expect(first.is).toBe('written');
    expect(second.is).toBe('newer');
    if (second.is !== 'newer') return;
    expect(second.ticket.visit.overrides.map(({ value }) => value)).toEqual(['grass']);
    const again = await writeChange(store, second.ticket, setTo('sand'));
    expect(again.is === 'written' && again.ticket.visit.overrides.map(({ value }) => value)).toEqual(['grass', 'sand']);
  });
});

describe('a ticket', () => {
  it('made at the bench has a word that the fitters can call out, whatever the customer speaks', async () => {
    const store = memoryStore();
    await store.put('shop', 'shop', { language: 'es' });
    expect(ticketWords('es', 'de')).toContain((await newTicket(store, { ...visit, language: 'de' }, NOW)).word);
  });

  it('keeps the customer’s own answer beside the fitter’s', async () => {
    const store = memoryStore();
    const written = await writeChange(store, await newTicket(store, visit, NOW), setTo('grass'));
    expect(written.is === 'written' && written.ticket.visit.answers).toEqual({ floor: 'tiles' });
    expect(written.is === 'written' && written.ticket.state).toBe('open');
  });

  it('made from a code with the stop word alone says that health answers did not come along', async () => {
    const store = memoryStore();
    expect((await newTicket(store, { ...visit, hold: 'none' }, NOW, 'TAEA')).handed).toBe(false);
    expect((await newTicket(store, visit, NOW, 'TAEB')).handed).toBe(true);
  });

  it('whose day is over is not brought back by a late change', async () => {
    const store = memoryStore();
    const seen = await newTicket(store, visit, NOW);
    await store.delete('visits', seen.id);
    expect(await writeChange(store, seen, setTo('grass'))).toEqual({ is: 'gone' });
    expect(await store.all('visits')).toEqual([]);
  });

  it('that cannot be saved keeps the change on the screen and says so', async () => {
    const store = memoryStore();
    const seen = await newTicket(store, visit, NOW);
    const full = { ...store, update: () => Promise.reject(new DOMException('full', 'QuotaExceededError')) };
    const written = await writeChange(full, seen, setTo('grass'));
    expect(written.is).toBe('unsaved');
    expect(written.is === 'unsaved' && written.ticket.visit.overrides).toHaveLength(1);
  });

  it('opened from a card remembers the code, so that a second scan finds it again', async () => {
    const ticket = await newTicket(memoryStore(), visit, NOW, 'TAEA');
    expect(ticket.bench).toEqual({ ...NO_NOTES, code: 'TAEA' });
  });
});

describe('noting which pairs are shown', () => {
  it('is no change of anybody’s, so that it stands in nobody’s way', async () => {
    const store = memoryStore();
    const seen = await newTicket(store, visit, NOW);
    const noted = await rememberShown(store, seen, { shown: ['Quernbridge'], letters: ['quernbridge'] });
    expect(noted.revision).toBe(seen.revision);
    const kept = await store.get<BenchTicket>('visits', seen.id);
    expect(kept?.bench).toMatchObject({ shown: ['Quernbridge'], letters: ['quernbridge'] });
    expect(kept?.state).toBe('open');
    expect((await writeChange(store, seen, setTo('grass'))).is).toBe('written');
  });

  it('brings back no ticket that was wiped', async () => {
    const store = memoryStore();
    const seen = await newTicket(store, visit, NOW);
    await store.delete('visits', seen.id);
    await rememberShown(store, seen, { shown: ['Quernbridge'], letters: ['quernbridge'] });
    expect(await store.all('visits')).toEqual([]);
  });
});

describe('waiting', () => {
  it('is told in whole minutes, and not at all when the clock was set back', () => {
    const finishedAt = NOW.toISOString();
    expect(waitedMinutes({ finishedAt }, new Date('2026-11-25T10:12:50Z'))).toBe(12);
    expect(waitedMinutes({ finishedAt }, new Date('2026-11-25T09:30:00Z'))).toBeUndefined();
  });
});

describe('the day of a ticket', () => {
  it('is the shop’s own: early in the morning in Auckland the count begins anew though London has yesterday', () => {
    // Thirteen hours ahead of UTC in November.
    const moments = ['2026-11-24T10:50:00Z', '2026-11-24T11:10:00Z', '2026-11-25T00:30:00Z'];
    const script = fileURLToPath(new URL('./tickets-through-a-day.ts', import.meta.url));
    // A time zone belongs to a whole process.
    const told = (TZ: string) =>
      JSON.parse(
        execFileSync(process.execPath, ['--import', 'tsx', script, ...moments], {
          env: { ...process.env, TZ },
          encoding: 'utf8',
        }),
      );
    expect(told('Pacific/Auckland')).toEqual([1, 1, 2]);
    expect(told('Europe/London')).toEqual([1, 2, 1]);
  });
});
