import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { derivePin, freshSalt } from '../../src/screens/fitter/derive-pin.ts';
import { memoryStore } from '../../src/storage/memory-store.ts';
import {
  type Derive,
  forgetPin,
  hasPin,
  PIN_ITERATIONS,
  type PinRecord,
  readPin,
  setPin,
  tryPin,
  waitAfter,
} from '../../src/storage/pin.ts';
import type { Store } from '../../src/storage/store.ts';

/** Quick stand-in for the browser's derivation. */
const derive: Derive = async (pin, salt, iterations) => `${salt}/${iterations}/${[...pin].reverse().join('')}`;
const NOON = Date.UTC(2026, 10, 25, 12);

async function shopWithPin(pin = '2468'): Promise<Store> {
  const store = memoryStore();
  await setPin(store, pin, derive, 'salt');
  return store;
}
const wrongTimes = async (store: Store, times: number): Promise<void> => {
  for (let n = 0; n < times; n += 1) await tryPin(store, '0000', derive, NOON);
};

describe('a PIN as typed', () => {
  it('may be pasted with spaces and dashes, and has four digits or more', () => {
    expect(readPin(' 24-68 ')).toEqual({ pin: '2468' });
    expect(readPin('٢٤٦٨')).toEqual({ pin: '2468' });
    expect(readPin('２４６８')).toEqual({ pin: '2468' });
    expect(readPin('246')).toEqual({ code: 'too-short' });
    expect(readPin('24 68a')).toEqual({ code: 'not-digits' });
    expect(readPin('')).toEqual({ code: 'too-short' });
  });
});

describe('the shop’s PIN', () => {
  it('opens with the right digits and with no others', async () => {
    const store = await shopWithPin();
    expect(await tryPin(store, '2468', derive, NOON)).toEqual({ is: 'right' });
    expect(await tryPin(store, '2469', derive, NOON)).toEqual({ is: 'wrong', wait: 0 });
  });

  it('is stored derived, never plain', async () => {
    const store = memoryStore();
    await setPin(store, '246813579', derivePin, freshSalt());
    expect(JSON.stringify(await store.all('shop'))).not.toContain('246813579');
  });

  it('is not replaced by a second tab that sets one too', async () => {
    const store = await shopWithPin('2468');
    expect(await setPin(store, '1357', derive, 'other')).toBe(false);
    expect(await tryPin(store, '2468', derive, NOON)).toEqual({ is: 'right' });
  });

  it('keeps a fitter waiting after three slips, longer each time, and says how long', async () => {
    const store = await shopWithPin();
    await wrongTimes(store, 2);
    expect(await tryPin(store, '0000', derive, NOON)).toEqual({ is: 'wrong', wait: 5_000 });
    expect(await tryPin(store, '2468', derive, NOON + 1_000)).toEqual({ is: 'wait', wait: 4_000 });
    expect(await tryPin(store, '0000', derive, NOON + 5_000)).toEqual({ is: 'wrong', wait: 10_000 });
    expect(await tryPin(store, '2468', derive, NOON + 15_000)).toEqual({ is: 'right' });
    expect(await tryPin(store, '0000', derive, NOON + 15_000)).toEqual({ is: 'wrong', wait: 0 });
  });

  it('counts a try before it is checked, so that closing the page gives nothing back', async () => {
    const store = await shopWithPin();
    const closed: Derive = () => Promise.reject(new Error('page closed'));
    for (let n = 0; n < 3; n += 1) await tryPin(store, '0000', closed, NOON).catch(() => undefined);
    expect((await tryPin(store, '2468', derive, NOON)).is).toBe('wait');
  });

  it('does not lock a shop out for a day because the clock was set back', async () => {
    const store = await shopWithPin();
    await wrongTimes(store, 3);
    const yesterday = NOON - 24 * 3_600_000;
    expect(await tryPin(store, '2468', derive, yesterday)).toEqual({ is: 'wait', wait: 5_000 });
    expect(await tryPin(store, '2468', derive, yesterday + 5_000)).toEqual({ is: 'right' });
  });

  it('never waits longer than a quarter of an hour, and never less for one more wrong try', () => {
    fc.assert(
      fc.property(fc.nat(200), fc.nat(10_000_000), (wrong, later) => {
        const record = { wrong, lastWrong: NOON };
        const wait = waitAfter(record, NOON + later);
        expect(wait).toBeLessThanOrEqual(15 * 60_000);
        expect(waitAfter({ ...record, wrong: wrong + 1 }, NOON + later)).toBeGreaterThanOrEqual(wait);
      }),
    );
  });

  it('when forgotten goes together with every visit, and with nothing else', async () => {
    const store = await shopWithPin();
    await store.put('visits', 'maple 1', { id: 'maple 1' });
    await store.put('tallies', 'gaps', { visits: 3 });
    await forgetPin(store);
    expect(await hasPin(store)).toBe(false);
    expect(await store.all('visits')).toEqual([]);
    expect(await store.get('tallies', 'gaps')).toEqual({ visits: 3 });
  });
});

describe('what stands in its docs', () => {
  it('waits ten seconds after the fourth wrong try', () => {
    expect(waitAfter({ wrong: 4, lastWrong: 1000 }, 1000)).toBe(10000);
  });
});

describe('the derivation', () => {
  it('runs at least the rounds that OWASP asks for with HMAC-SHA-256', async () => {
    // OWASP, Password Storage Cheat Sheet: 600,000 or more.
    expect(PIN_ITERATIONS).toBeGreaterThanOrEqual(600_000);
    const store = await shopWithPin();
    expect((await store.get<PinRecord>('shop', 'pin'))?.iterations).toBe(PIN_ITERATIONS);
  });

  it('gives the published result for a known password and salt', async () => {
    // RFC 7914, section 11: PBKDF2-HMAC-SHA-256 of "passwd" and "salt", 1 round, starts 55 ac 04 6e 56 e3 08 9f.
    const bytes = Uint8Array.from(atob(await derivePin('passwd', 'salt', 1)), (letter) => letter.charCodeAt(0));
    expect([...bytes.slice(0, 8)].map((byte) => byte.toString(16).padStart(2, '0')).join(' ')).toBe(
      '55 ac 04 6e 56 e3 08 9f',
    );
  });

  it('takes another salt each time', () => {
    expect(freshSalt()).not.toBe(freshSalt());
    expect(atob(freshSalt())).toHaveLength(16);
  });
});
