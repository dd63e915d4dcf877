import { plainText } from '../units/typed-number.ts';
import { wipeVisits } from './shop-wipe.ts';
import type { Store } from './store.ts';

/** How the shop's PIN is kept: derived, never plain, with what is needed to derive it again and the wrong tries so far. */
export interface PinRecord {
  readonly salt: string;
  readonly derived: string;
  readonly iterations: number;
  readonly wrong: number;
  /** Milliseconds, this device's clock. */
  readonly lastWrong: number;
}

/** Turns a PIN into what is stored. The browser's own cryptography does it; tests may use something quicker. */
export type Derive = (pin: string, salt: string, iterations: number) => Promise<string>;

/**
 * OWASP, Password Storage Cheat Sheet: 600,000 rounds or more for PBKDF2 with HMAC-SHA-256. Read as quoted by others
 * (the change that brought it into RustCrypto's pbkdf2), not on OWASP's own page.
 */
export const PIN_ITERATIONS = 600_000;

/** Digits. Four is common practice for a PIN; longer ones are welcome. */
export const PIN_SHORTEST = 4;
const PIN_LONGEST = 32;

/** Wrong tries that cost nothing: slips of the finger. Common practice. */
const FREE_TRIES = 3;
/** The first wait; each further wrong try doubles it, up to the longest. Our choice. */
const FIRST_WAIT = 5_000;
const LONGEST_WAIT = 15 * 60_000;

/** The bench locks itself after so long without a touch. PCI DSS 8.2.8 asks for fifteen minutes at most; from memory. */
export const IDLE_LOCK = 15 * 60_000;

/** The PIN as typed or pasted, in the digits of any keyboard, without spaces and dashes; or what is wrong with it. Words: `bench.pin.<code>`. */
export function readPin(typed: string): { readonly pin: string } | { readonly code: 'not-digits' | 'too-short' } {
  const pin = plainText(typed).replace(/[\s-]/g, '');
  if (!/^\d*$/.test(pin) || pin.length > PIN_LONGEST) return { code: 'not-digits' };
  return pin.length < PIN_SHORTEST ? { code: 'too-short' } : { pin };
}

/**
 * How long to wait before the next try, milliseconds.
 *
 * A clock set back would make the wait endless, or a clock set forward end it; backwards is taken as no time passed.
 *
 * @example
 * waitAfter({ wrong: 4, lastWrong: 1000 }, 1000) // 10000
 */
export function waitAfter({ wrong, lastWrong }: Pick<PinRecord, 'wrong' | 'lastWrong'>, now: number): number {
  if (wrong < FREE_TRIES) return 0;
  const whole = Math.min(LONGEST_WAIT, FIRST_WAIT * 2 ** (wrong - FREE_TRIES));
  return Math.max(0, whole - Math.max(0, now - lastWrong));
}

export type PinTry =
  | { readonly is: 'right' }
  | { readonly is: 'wrong' | 'wait'; readonly wait: number }
  | { readonly is: 'none' };

/**
 * Tries a PIN. The try is counted and written before it is checked, so that closing the page gives nothing back; the
 * right PIN sets the count to none.
 */
export async function tryPin(store: Store, pin: string, derive: Derive, now: number): Promise<PinTry> {
  let blocked = 0;
  const record = await store.update<PinRecord>('shop', 'pin', (old) => {
    if (old === undefined) return undefined;
    // Stamped anew when the clock went back: the wait starts over instead of lasting until the clock has caught up.
    const known = now < old.lastWrong ? { ...old, lastWrong: now } : old;
    blocked = waitAfter(known, now);
    return blocked > 0 ? known : { ...known, wrong: known.wrong + 1, lastWrong: now };
  });
  if (record === undefined) return { is: 'none' };
  if (blocked > 0) return { is: 'wait', wait: blocked };
  const derived = await derive(pin, record.salt, record.iterations);
  if (derived !== record.derived) return { is: 'wrong', wait: waitAfter(record, now) };
  await store.update<PinRecord>('shop', 'pin', (old) => old && { ...old, wrong: 0 });
  return { is: 'right' };
}

/** Sets the shop's PIN where there is none. `false`: somebody else was quicker; theirs stands. */
export async function setPin(store: Store, pin: string, derive: Derive, salt: string): Promise<boolean> {
  const derived = await derive(pin, salt, PIN_ITERATIONS);
  let set = false;
  await store.update<PinRecord>('shop', 'pin', (old) => {
    set = old === undefined;
    return set ? { salt, derived, iterations: PIN_ITERATIONS, wrong: 0, lastWrong: 0 } : undefined;
  });
  return set;
}

export const hasPin = async (store: Store): Promise<boolean> =>
  (await store.get<PinRecord>('shop', 'pin')) !== undefined;

/** A forgotten PIN: every visit on this device goes first, then the PIN. Sums without persons and the stock stay. */
export async function forgetPin(store: Store): Promise<void> {
  await wipeVisits(store);
  await store.delete('shop', 'pin');
}
