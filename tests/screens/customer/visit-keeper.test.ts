import { describe, expect, it } from 'vitest';
import { savedInterview } from '../../../src/interview/saved.ts';
import { VisitKeeper } from '../../../src/screens/customer/visit-keeper.ts';
import { memoryStore } from '../../../src/storage/memory-store.ts';
import type { Store } from '../../../src/storage/store.ts';
import { ticketWords } from '../../../src/storage/ticket-words.ts';
import { PICNIC, TOY_TABLES } from '../../flow/toy-flows.ts';

const interview = savedInterview(PICNIC, { answers: { weather: 'sun' }, at: 'basket', changing: false });
const NOW = new Date().toISOString();

/** A customer who speaks French, in a shop where the fitters speak German. */
function keeperOn(store: Store, visit = () => 'fr', fitters = 'de'): VisitKeeper {
  return new VisitKeeper(store, PICNIC, TOY_TABLES, visit, () => fitters);
}

async function left(draft: unknown) {
  const store = memoryStore();
  await store.put('draft', 'draft', draft);
  const keeper = keeperOn(store);
  return { found: await keeper.left(), keeper, store };
}

describe('a draft that was left on the tablet', () => {
  it('is offered under the ticket it had', async () => {
    const { found, keeper } = await left({ interview, startedAt: NOW, ticket: { word: 'heron', number: 3 } });
    expect(found.interview?.at).toBe('basket');
    expect(keeper.ticket).toEqual({ word: 'heron', number: 3 });
  });

  it('tells the language it was held in; one from before that was kept opens without', async () => {
    const ticket = { word: 'heron', number: 3 };
    const { found } = await left({ interview, startedAt: NOW, ticket, language: 'ar' });
    expect(found.language).toBe('ar');
    const { found: old } = await left({ interview, startedAt: NOW, ticket });
    expect(old.interview?.at).toBe('basket');
    expect(old).not.toHaveProperty('language');
  });

  it('keeps its ticket as it was made, also where the shop has words of another language now', async () => {
    const ticket = { word: 'thistle', number: 1 };
    const { keeper } = await left({ interview, startedAt: NOW, ticket });
    expect(keeper.ticket).toEqual(ticket);
  });

  it('is kept with the language on the screen', async () => {
    const { keeper, store } = await left(undefined);
    keeper.begin();
    keeper.save({ answers: {}, at: 'weather', changing: false });
    await expect.poll(() => store.get('draft', 'draft')).toMatchObject({ language: 'fr' });
  });

  it.each([[undefined], [null], ['heron 3'], [{ word: {}, number: 'x' }]])(
    'gets a ticket anew where its own (%j) is damaged',
    async (ticket) => {
      const { found, keeper } = await left({ interview, startedAt: NOW, ticket });
      expect(found.interview?.at).toBe('basket');
      expect(keeper.ticket).toMatchObject({ number: 1 });
    },
  );

  it.each([[undefined], ['some day'], [{ toString: 1 }], ['2020-01-01T10:00:00.000Z'], ['9999-01-01T10:00:00.000Z']])(
    'is gone where its day (%j) is another or cannot be told',
    async (startedAt) => {
      const { found, store } = await left({ interview, startedAt, ticket: { word: 'heron', number: 3 } });
      expect(found).toEqual({});
      expect(await store.get('draft', 'draft')).toBeUndefined();
    },
  );
});

describe('a visit that begins', () => {
  it('gets a ticket that the fitters can call out, whatever the customer speaks', async () => {
    const { keeper } = await left(undefined);
    keeper.begin();
    await keeper.count();
    expect(ticketWords('de', 'fr')).toContain(keeper.ticket?.word);
  });

  it('gets one in their language also where nothing can be counted', async () => {
    const store: Store = { ...memoryStore(), update: () => Promise.reject(new Error('full')) };
    const keeper = keeperOn(store);
    keeper.begin();
    await keeper.count();
    expect(ticketWords('de', 'fr')).toContain(keeper.ticket?.word);
  });

  it('takes a word its card has letters for when the customer leaves the fitters’ Arabic, and keeps its number', async () => {
    let spoken = 'ar';
    const keeper = keeperOn(memoryStore(), () => spoken, 'ar');
    keeper.begin();
    await keeper.count();
    const { number } = keeper.ticket ?? {};
    expect(ticketWords('ar', 'ar')).toContain(keeper.ticket?.word);
    spoken = 'fr';
    await keeper.respeak();
    expect(ticketWords('ar', 'fr')).toContain(keeper.ticket?.word);
    expect(keeper.ticket?.number).toBe(number);
  });

  it('keeps the word the fitters call out where their letters are the card’s, whatever is spoken next', async () => {
    let spoken = 'fr';
    const keeper = keeperOn(memoryStore(), () => spoken);
    keeper.begin();
    await keeper.count();
    const ticket = keeper.ticket;
    spoken = 'ar';
    await keeper.respeak();
    expect(keeper.ticket).toEqual(ticket);
  });
});
