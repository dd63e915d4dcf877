import { describe, expect, it } from 'vitest';
import { memoryStore } from '../../src/storage/memory-store.ts';

describe('a tablet that keeps things in memory', () => {
  it('says that nothing lasts', () => {
    expect(memoryStore().lasting).toBe(false);
  });

  it('keeps what was put in, not what became of it since', async () => {
    const store = memoryStore();
    const record = { answers: ['one'] };
    await store.put('draft', 'draft', record);
    record.answers.push('two');
    const read = await store.get<{ answers: string[] }>('draft', 'draft');
    expect(read).toEqual({ answers: ['one'] });
    read?.answers.push('three');
    expect(await store.all('draft')).toEqual([{ answers: ['one'] }]);
  });

  it('keeps areas apart, and leaves what a change leaves', async () => {
    const store = memoryStore();
    await store.put('shop', 'draft', 1);
    await store.update('shop', 'draft', () => undefined);
    await store.delete('draft', 'draft');
    expect(await store.get('shop', 'draft')).toBe(1);
    expect(await store.update<number>('shop', 'draft', (old) => (old ?? 0) + 1)).toBe(2);
  });
});
