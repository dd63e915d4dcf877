import { describe, expect, it } from 'vitest';
import { DraftKeeper } from '../../src/storage/draft.ts';
import { memoryStore } from '../../src/storage/memory-store.ts';
import type { Store } from '../../src/storage/store.ts';

/** A store whose writes end only when they are let go, and the order they began in. */
function slowStore() {
  const store = memoryStore();
  const began: unknown[] = [];
  const waiting: (() => void)[] = [];
  const slow: Store = {
    ...store,
    put: async (area, key, value) => {
      began.push(value);
      await new Promise<void>((resolve) => waiting.push(resolve));
      await store.put(area, key, value);
    },
  };
  return { store, slow, began, letGo: () => waiting.shift()?.() };
}
const settled = () => new Promise((resolve) => setTimeout(resolve));
const kept = (store: Store) => store.get('draft', 'draft');

describe('the draft of an interview', () => {
  it('is kept answer by answer', async () => {
    const store = memoryStore();
    const draft = new DraftKeeper<string>(store);
    draft.save('one');
    await draft.flush();
    draft.save('two');
    await draft.flush();
    expect(await draft.load()).toBe('two');
  });

  it('holds nobody up: a save returns before anything is written', () => {
    const { slow, began } = slowStore();
    new DraftKeeper<string>(slow).save('one');
    expect(began).toEqual([]);
  });

  it('is written in order, and of what waits only the newest', async () => {
    const { store, slow, began, letGo } = slowStore();
    const draft = new DraftKeeper<string>(slow);
    draft.save('one');
    await settled();
    draft.save('two');
    draft.save('three');
    letGo();
    await settled();
    letGo();
    await draft.flush();
    expect(began).toEqual(['one', 'three']);
    expect(await kept(store)).toBe('three');
  });

  it('is gone once finished, though a write was still under way', async () => {
    const { store, slow, letGo } = slowStore();
    const draft = new DraftKeeper<string>(slow);
    draft.save('one');
    await settled();
    const finished = draft.finish();
    draft.save('too late');
    letGo();
    await finished;
    await settled();
    expect(await kept(store)).toBeUndefined();
  });

  it('says when it could not be written, and writes the next one all the same', async () => {
    const store = memoryStore();
    let full = true;
    const failing: Store = {
      ...store,
      put: async (...args) => {
        if (full) throw new Error('full');
        await store.put(...args);
      },
    };
    const reasons: string[] = [];
    const draft = new DraftKeeper<string>(failing, (reason) => reasons.push(String(reason)));
    draft.save('one');
    await draft.flush();
    full = false;
    draft.save('two');
    await draft.flush();
    expect(reasons).toEqual(['Error: full']);
    expect(await kept(store)).toBe('two');
  });
});
