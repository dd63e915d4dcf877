import { describe, expect, it } from 'vitest';
import { memoryStore } from '../../src/storage/memory-store.ts';
import { type Derive, setPin, tryPin } from '../../src/storage/pin.ts';
import { changePin } from '../../src/storage/shop-pin.ts';

/** Quicker than the browser's, and just as telling for the order of things. */
const derive: Derive = async (pin, salt) => `${salt}:${pin}`;

async function withPin() {
  const store = memoryStore();
  await setPin(store, '2468', derive, 'a');
  return store;
}

describe('changing the PIN', () => {
  it('takes the old one and puts the new one in its place', async () => {
    const store = await withPin();
    const change = { old: '2468', next: '1357', salt: 'b', now: 1000 };
    expect(await changePin(store, change, derive)).toEqual({ is: 'right' });
    expect((await tryPin(store, '1357', derive, 2000)).is).toBe('right');
    expect((await tryPin(store, '2468', derive, 3000)).is).toBe('wrong');
  });

  it('with a wrong old one changes nothing, and counts as a wrong try at the door', async () => {
    const store = await withPin();
    for (const now of [1000, 2000, 3000]) {
      expect((await changePin(store, { old: '9999', next: '1357', salt: 'b', now }, derive)).is).toBe('wrong');
    }
    expect((await changePin(store, { old: '2468', next: '1357', salt: 'b', now: 3001 }, derive)).is).toBe('wait');
    expect((await tryPin(store, '2468', derive, 20 * 60_000)).is).toBe('right');
  });
});
