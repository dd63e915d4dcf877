import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { LARGEST } from '../../src/stock/read-csv.ts';
import type { Stock } from '../../src/stock/shoe.ts';
import { writeStock } from '../../src/stock/write-csv.ts';
import { memoryStore } from '../../src/storage/memory-store.ts';
import type { Store } from '../../src/storage/store.ts';
import { StockKeeper } from '../../src/worker/stock-keeper.ts';
import { TOY } from './toy-stock.ts';

const NOW = '2026-11-25T11:00:00';
const TODAY = '2026-11-25';
const nothing = async () => undefined;
const keeperOn = (store: Store) => new StockKeeper(Promise.resolve(store));
const file = (...parts: string[]) => new Blob(parts);
const HEADER = 'shoe,model,box,eu,on hand\n';

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date'], now: new Date(2026, 10, 25, 12) });
});
afterEach(() => {
  vi.useRealTimers();
});

async function holdingToy(store = memoryStore()) {
  await store.put('stock', 'stock', TOY);
  const keeper = keeperOn(store);
  await keeper.open(nothing);
  return { store, keeper };
}

describe('the stock of a tablet', () => {
  it('is looked through for what no card can print before it is taken', async () => {
    const lacking = { code: 'stock-unprintable', severity: 'note', data: { characters: '∞', mark: '◊' } } as const;
    const keeper = new StockKeeper(Promise.resolve(memoryStore()), async () => [lacking]);
    const offer = await keeper.offer(file(writeStock(TOY)), NOW);
    expect([offer.usable, offer.findings]).toEqual([true, [lacking]]);
  });

  it('is the one it was given last, else the list served', async () => {
    const { keeper } = await holdingToy();
    expect(keeper.summary()).toEqual({ asOf: TOY.asOf, shoes: 2, boxes: 3 });
    const fresh = keeperOn(memoryStore());
    const made = new Date(2026, 10, 25, 8, 30);
    await fresh.open(async () => ({ text: writeStock(TOY), made }));
    expect(fresh.summary()).toEqual({ asOf: '2026-11-25T08:30:00', shoes: 2, boxes: 3 });
  });

  it('is none where nothing was given and nothing is served, and says so', async () => {
    const keeper = keeperOn(memoryStore());
    expect(await keeper.open(nothing)).toBeUndefined();
    expect(() => keeper.today()).toThrow('No stock');
  });

  it('passes a damaged record over for the list served', async () => {
    const store = memoryStore();
    await store.put('stock', 'stock', { shoes: 'gone' });
    const keeper = keeperOn(store);
    expect(await keeper.open(async () => ({ text: writeStock(TOY), made: new Date() }))).toMatchObject({ boxes: 3 });
  });
});

describe('what was marked today', () => {
  it('counts today, and no longer on a tablet left on overnight', async () => {
    const { keeper } = await holdingToy();
    keeper.useMarks([{ box: 't42', what: 'sold', at: `${TODAY}T10:00:00` }], TODAY);
    const pairs = () => keeper.today().boxes.map(({ onHand }) => onHand);
    expect(pairs()).toEqual([2, 1, 0]);
    vi.setSystemTime(new Date(2026, 10, 26, 8));
    expect(pairs()).toEqual([2, 1, 1]);
  });
});

describe('a list offered', () => {
  it('changes nothing until it is swapped in, and then survives a new start', async () => {
    const { store, keeper } = await holdingToy();
    const offer = await keeper.offer(file(HEADER, 'fern,Fern,f40,40,1\n', 'fern,,f41,41,two\n'), NOW);
    expect(offer).toMatchObject({ usable: true, shoes: 1, boxes: 1, refused: 1, gone: 3, fresh: 1 });
    expect(offer.findings[0]).toMatchObject({ code: 'stock-not-a-number', line: 3 });
    expect(keeper.summary()?.boxes).toBe(3);
    expect((await store.get<Stock>('stock', 'stock'))?.boxes).toHaveLength(3);
    await keeper.swap();
    const later = keeperOn(store);
    expect(await later.open(nothing)).toEqual({ asOf: NOW, shoes: 1, boxes: 1 });
  });

  it('leaves the stock before it within reach, there and back, also after a new start', async () => {
    const { store, keeper } = await holdingToy();
    expect(await keeper.before()).toBeUndefined();
    await keeper.offer(file(HEADER, 'fern,Fern,f40,40,1\n'), NOW);
    await keeper.swap();
    expect(await keeper.before()).toEqual({ asOf: TOY.asOf, shoes: 2, boxes: 3 });
    const later = keeperOn(store);
    await later.open(nothing);
    expect(await later.back()).toEqual({ stock: { asOf: TOY.asOf, shoes: 2, boxes: 3 }, beforeLost: false });
    expect([(await later.before())?.boxes, later.today().boxes.length]).toEqual([1, 3]);
    await later.back();
    expect([later.summary()?.boxes, (await later.before())?.boxes]).toEqual([1, 3]);
  });

  it('for which there is no room beside the old one is used and says so, and no older stock is offered in its place', async () => {
    const store = memoryStore();
    await store.put('stock', 'stock', TOY);
    await store.put('stock', 'before', { ...TOY, boxes: [] });
    const put: Store['put'] = (area, key, value) =>
      key === 'before' ? Promise.reject(new DOMException('', 'QuotaExceededError')) : store.put(area, key, value);
    const keeper = keeperOn({ ...store, put });
    await keeper.open(nothing);
    await keeper.offer(file(HEADER, 'fern,Fern,f40,40,1\n'), NOW);
    expect(await keeper.swap()).toMatchObject({ stock: { boxes: 1 }, beforeLost: true });
    expect(await keeper.before()).toBeUndefined();
    await expect(keeper.back()).rejects.toThrow('put aside');
  });

  it('that is the first on a tablet has lost none before it', async () => {
    const keeper = keeperOn(memoryStore());
    await keeper.open(nothing);
    await keeper.offer(file(HEADER, 'fern,Fern,f40,40,1\n'), NOW);
    expect((await keeper.swap()).beforeLost).toBe(false);
  });

  it('is told when going back leaves no room for the one in use until then', async () => {
    const { store, keeper } = await holdingToy();
    await keeper.offer(file(HEADER, 'fern,Fern,f40,40,1\n'), NOW);
    await keeper.swap();
    const put: Store['put'] = (area, key, value) =>
      key === 'before' ? Promise.reject(new DOMException('', 'QuotaExceededError')) : store.put(area, key, value);
    const full = keeperOn({ ...store, put });
    await full.open(nothing);
    expect(await full.back()).toMatchObject({ stock: { boxes: 3 }, beforeLost: true });
    expect(await full.before()).toBeUndefined();
  });

  it('can be left, and is then gone', async () => {
    const { keeper } = await holdingToy();
    await keeper.offer(file(HEADER, 'fern,Fern,f40,40,1\n'), NOW);
    keeper.leave();
    await expect(keeper.swap()).rejects.toThrow('Nothing was offered');
    expect(keeper.summary()?.boxes).toBe(3);
  });

  it('that cannot be kept is not used either: the old stock still counts', async () => {
    const store = memoryStore();
    await store.put('stock', 'stock', TOY);
    const full = { ...store, put: async () => Promise.reject(new DOMException('', 'QuotaExceededError')) };
    const keeper = keeperOn(full);
    await keeper.open(nothing);
    await keeper.offer(file(HEADER, 'fern,Fern,f40,40,1\n'), NOW);
    await expect(keeper.swap()).rejects.toThrow();
    expect(keeper.summary()?.boxes).toBe(3);
  });

  it.each([
    ['empty', '', 'stock-empty'],
    ['a workbook', 'PK\u0003\u0004rest', 'stock-not-text'],
    ['prose', 'dear shop', 'stock-no-header'],
    ['another kind of JSON', '{"a":1}', 'shop-copy-foreign'],
    ['a torn copy', '{"kind":"lacewing-stock","ver', 'shop-copy-damaged'],
  ])('that is %s is refused with its reason, and nothing is lost', async (_, text, code) => {
    const { keeper } = await holdingToy();
    const offer = await keeper.offer(file(text), NOW);
    expect([offer.usable, offer.findings[0]?.code]).toEqual([false, code]);
    await expect(keeper.swap()).rejects.toThrow();
    expect(keeper.summary()?.boxes).toBe(3);
  });

  it('larger than any list is refused unread', async () => {
    const { keeper } = await holdingToy();
    const huge = { size: LARGEST * 3 + 1, text: () => Promise.reject(new Error('It was read')) } as unknown as Blob;
    expect((await keeper.offer(huge, NOW)).findings[0]?.code).toBe('stock-too-large');
  });

  it('of fifty million bytes gets a finding and leaves the stock alone', async () => {
    const { keeper } = await holdingToy();
    const offer = await keeper.offer(file('x'.repeat(50_000_000)), NOW);
    expect(offer.findings.map(({ code }) => code)).toEqual(['stock-too-large']);
    expect(keeper.summary()?.boxes).toBe(3);
  });

  it('with hundreds of findings shows the first two hundred, refusals first, and counts the rest', async () => {
    const { keeper } = await holdingToy();
    const notes = Array.from({ length: 300 }, (_, at) => `n${at},=x${at},n${at},40,1\n`);
    const offer = await keeper.offer(file(HEADER, ...notes, 'bad,Bad,b1,40,two\n'), NOW);
    expect(offer.findings).toHaveLength(200);
    expect(offer.findings[0]).toMatchObject({ severity: 'error', line: 302 });
    expect(offer.more).toBe(102);
    expect(keeper.findings).toHaveLength(302);
  });
});

describe('a copy for another tablet', () => {
  it('carries the stock and what was marked today', async () => {
    const { keeper } = await holdingToy();
    const marks = [{ box: 'h42', what: 'sold', at: `${TODAY}T10:00:00` }] as const;
    keeper.useMarks(marks, TODAY);
    const other = keeperOn(memoryStore());
    await other.open(nothing);
    const offer = await other.offer(keeper.copy(), NOW);
    expect(offer).toMatchObject({ isCopy: true, marks: 1, asOf: TOY.asOf, findings: [] });
    const swapped = await other.swap();
    expect(swapped.marks).toEqual(marks);
    other.useMarks(swapped.marks, TODAY);
    expect(other.today()).toEqual(keeper.today());
  });

  it('leaves marks out that are none', async () => {
    const { keeper } = await holdingToy();
    const copy = JSON.parse(await keeper.copy().text());
    const other = keeperOn(memoryStore());
    const damaged = { ...copy, marks: [{ box: 1 }, { box: 'h42', what: 'lost', at: NOW }, null] };
    const offer = await other.offer(file(JSON.stringify(damaged)), NOW);
    expect(offer.findings).toMatchObject([{ code: 'shop-copy-marks', data: { marks: 3 } }]);
  });

  it('of another version is refused', async () => {
    const other = keeperOn(memoryStore());
    const offer = await other.offer(file('{"kind":"lacewing-stock","version":2}'), NOW);
    expect(offer.findings[0]?.code).toBe('shop-copy-version');
  });
});

describe('the list taken away', () => {
  it('leaves sold pairs out, keeps those only not found, and begins as a spreadsheet expects', async () => {
    const { keeper } = await holdingToy();
    keeper.useMarks(
      [
        { box: 'h42', what: 'sold', at: `${TODAY}T23:00:00` },
        { box: 't42', what: 'not-on-the-shelf', at: `${TODAY}T23:00:00` },
      ],
      TODAY,
    );
    await keeper.offer(keeper.list({ delimiter: ';', decimal: ',' }), NOW);
    await keeper.swap();
    keeper.useMarks([], TODAY);
    expect(keeper.today().boxes.map(({ id, onHand }) => [id, onHand])).toEqual([
      ['h42', 1],
      ['h42h', 1],
      ['t42', 1],
    ]);
    const bytes = new Uint8Array(await keeper.list({ delimiter: ';', decimal: ',' }).arrayBuffer());
    // The byte-order mark of UTF-8.
    expect([...bytes.slice(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
  });
});
