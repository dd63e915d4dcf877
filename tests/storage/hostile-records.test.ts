import { describe, expect, it } from 'vitest';
import { memoryStore } from '../../src/storage/memory-store.ts';
import { forgetPin } from '../../src/storage/pin.ts';
import { wipeOver } from '../../src/storage/retention.ts';
import { readStockCopy } from '../../src/storage/shop-copy.ts';
import { addMarks, isMoment, markBox, marksOn } from '../../src/storage/shop-marks.ts';
import { readSettingsFile } from '../../src/storage/shop-settings.ts';
import { wipeVisits } from '../../src/storage/shop-wipe.ts';
import { nextTicket, putTicket, strangeVisits, type Ticket, ticketsOf } from '../../src/storage/tickets.ts';

const NOW = new Date('2026-11-25T15:00:00');
const TODAY = '2026-11-25';
const GOOD: Ticket = {
  id: 'maple 1',
  word: 'maple',
  number: 1,
  startedAt: new Date('2026-11-25T14:00:00').toISOString(),
  finishedAt: new Date('2026-11-25T14:10:00').toISOString(),
  state: 'waiting',
  handed: true,
  visit: { flow: 'toy', flowVersion: 1, language: 'en', answers: {}, overrides: [], observation: {}, tryOns: [] },
  revision: 0,
};
/** What a later kiosk, or a torn write, may have left under a ticket's name. */
const STRANGE: readonly (readonly [string, unknown])[] = [
  ['of a later format', { ...GOOD, format: 2 }],
  ['in a state that is none yet', { ...GOOD, state: 'paused' }],
  ['whose visit is kept another way', { ...GOOD, visit: { format: 2, parts: [] } }],
  ['whose answers are a list', { ...GOOD, visit: { ...GOOD.visit, answers: [] } }],
  ['without its times', { ...GOOD, finishedAt: undefined, startedAt: 7 }],
  ['whose time is no text', { ...GOOD, finishedAt: { toString: 1 } }],
  ['without its name', { ...GOOD, id: undefined }],
  ['that is nothing', null],
  ['that is a word', 'torn'],
];

describe('a kept visit that this kiosk cannot read', () => {
  it.each(STRANGE)('(%s) leaves the others in the list, and is counted', async (_, record) => {
    const store = memoryStore();
    await store.put('visits', 'strange', record);
    await putTicket(store, GOOD);
    expect((await ticketsOf(store)).map(({ id }) => id)).toEqual(['maple 1']);
    expect(await strangeVisits(store)).toBe(1);
  });

  it('stays to the end of its day, for a kiosk that can', async () => {
    const store = memoryStore();
    await store.put('visits', 'strange', { ...GOOD, format: 2 });
    expect(await wipeOver(store, NOW, 24 * 60)).toEqual([]);
    expect(await wipeOver(store, new Date('2026-11-26T08:00:00'), 24 * 60)).toEqual(['strange']);
  });

  it('is over at once when it does not say its day, and lets others be wiped', async () => {
    const store = memoryStore();
    for (const [at, [, record]] of STRANGE.entries()) await store.put('visits', `strange ${at}`, record);
    await putTicket(store, { ...GOOD, state: 'closed' });
    const gone = await wipeOver(store, NOW, 24 * 60);
    expect(gone).toEqual(expect.arrayContaining(['strange 4', 'strange 5', 'strange 7', 'strange 8', 'maple 1']));
    expect(gone).not.toContain('strange 0');
  });

  it.each([
    ['every visit is wiped', wipeVisits],
    ['the PIN is forgotten', forgetPin],
  ])('goes with the others when %s', async (_, wipe) => {
    const store = memoryStore();
    for (const [at, [, record]] of STRANGE.entries()) await store.put('visits', `strange ${at}`, record);
    await putTicket(store, GOOD);
    await wipe(store);
    expect(await store.keys('visits')).toEqual([]);
  });
});

describe('a damaged record of the day', () => {
  it.each([['torn'], [{ at: 1 }], [[null, 7, { box: 'm1' }, { box: 'm1', what: 'sold', at: {} }]]])(
    'of marks (%j) does not keep the next tap from counting',
    async (record) => {
      const store = memoryStore();
      await store.put('stock', 'today', record);
      expect(await marksOn(store, TODAY)).toEqual([]);
      const mark = { box: 'm1', what: 'sold', at: `${TODAY}T10:00:00` } as const;
      expect(await markBox(store, mark)).toEqual([mark]);
      await store.put('stock', 'today', record);
      expect(await addMarks(store, [mark], TODAY)).toEqual([mark]);
    },
  );

  it('of the count begins the count again', async () => {
    const store = memoryStore();
    await store.put('shop', 'ticket-count', { day: TODAY, last: 'x' });
    expect((await nextTicket(store, TODAY, { fitters: 'en', visit: 'en' })).number).toBe(1);
  });
});

describe('a settings file whose part is nested wrongly', () => {
  const deep = '['.repeat(20_000) + ']'.repeat(20_000);
  it.each([
    ['the shop', `{"kind":"lacewing-settings","version":1,"shop":${deep},"settings":{}}`],
    ['a setting', `{"kind":"lacewing-settings","version":1,"shop":{},"settings":{"quiet":${deep}}}`],
  ])('(%s) is refused with its reason', (_, text) => {
    const { value, findings } = readSettingsFile(text, 'x.json');
    expect(value).toBeUndefined();
    expect(findings.map(({ code }) => code)).toEqual(['shop-not-json']);
  });
});

describe('a stock copy', () => {
  const copy = (asOf: string, marks: readonly unknown[] = []) =>
    readStockCopy(
      JSON.stringify({
        kind: 'lacewing-stock',
        version: 1,
        asOf,
        marks,
        list: 'shoe,model,shelf,box,eu,on hand\nh,H,men,b,39,1',
      }),
      TODAY,
    );
  it.each(['9999-12-31T23:59', '2026-11-26T00:00', '2027-01-01T10:00'])(
    'from a day to come (%s) is refused',
    (asOf) => {
      expect(copy(asOf)).toEqual({
        findings: [{ code: 'shop-copy-later', severity: 'error', value: asOf.slice(0, 10) }],
      });
    },
  );

  it.each(['2026-02-30T10:00', '2026-11-25T24:00', '2026-11-25', 'yesterday'])(
    'from no day (%s) is refused',
    (asOf) => {
      expect(copy(asOf).findings).toMatchObject([{ code: 'shop-copy-damaged' }]);
    },
  );

  it('leaves out marks of another day, and says how many', () => {
    const mark = (at: string) => ({ box: 'b', what: 'sold', at });
    const read = copy(`${TODAY}T09:00`, [
      mark(`${TODAY}T10:00`),
      mark('2026-11-24T10:00'),
      mark('9999-01-01T10:00'),
      1,
    ]);
    expect(read.value?.marks).toEqual([mark(`${TODAY}T10:00`)]);
    expect(read.findings).toEqual([
      { code: 'shop-copy-marks', severity: 'note', data: { marks: 1 } },
      { code: 'shop-copy-other-day', severity: 'note', data: { marks: 2 } },
    ]);
  });

  it('isMoment: knows how long a month is', () => {
    expect(isMoment('2026-11-25T09:12')).toBe(true);
    expect(isMoment('2026-02-30T09:12')).toBe(false);
  });
});
