import { describe, expect, it } from 'vitest';
import { memoryStore } from '../../src/storage/memory-store.ts';
import { addMarks, markBox, marksOn } from '../../src/storage/shop-marks.ts';

describe('a tap on a box', () => {
  it('holds for its day and no longer', async () => {
    const store = memoryStore();
    await markBox(store, { box: 'm1', what: 'sold', at: '2026-11-25T10:00:00' });
    expect(await marksOn(store, '2026-11-25')).toHaveLength(1);
    expect(await marksOn(store, '2026-11-26')).toEqual([]);
    const next = await markBox(store, { box: 'm2', what: 'sold', at: '2026-11-26T09:00:00' });
    expect(next.map(({ box }) => box)).toEqual(['m2']);
  });

  it('can be taken back, the last one on that box first', async () => {
    const store = memoryStore();
    await markBox(store, { box: 'm1', what: 'sold', at: '2026-11-25T10:00:00' });
    await markBox(store, { box: 'm1', what: 'not-on-the-shelf', at: '2026-11-25T10:05:00' });
    await markBox(store, { box: 'm2', what: 'sold', at: '2026-11-25T10:06:00' });
    const left = await markBox(store, { box: 'm1', what: 'undo', at: '2026-11-25T10:07:00' });
    expect(left.map(({ box, what }) => `${box} ${what}`)).toEqual(['m1 sold', 'm2 sold']);
  });

  it('from another tablet stands beside our own, each once', async () => {
    const store = memoryStore();
    const own = { box: 'm1', what: 'sold', at: '2026-11-25T10:00:00' } as const;
    const other = { box: 'm2', what: 'sold', at: '2026-11-25T10:30:00' } as const;
    const old = { box: 'm3', what: 'sold', at: '2026-11-24T10:30:00' } as const;
    await markBox(store, own);
    await addMarks(store, [own, other, old], '2026-11-25');
    expect(await marksOn(store, '2026-11-25')).toEqual([own, other]);
  });
});
