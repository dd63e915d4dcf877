import { type Derive, PIN_ITERATIONS, type PinRecord, type PinTry, tryPin } from './pin.ts';
import type { Store } from './store.ts';

export interface PinChange {
  readonly old: string;
  readonly next: string;
  readonly salt: string;
  /** Milliseconds, this device's clock. */
  readonly now: number;
}

/** Puts a new PIN in the place of the old one, which must be typed right; wrong tries count as at the door. */
export async function changePin(store: Store, { old, next, salt, now }: PinChange, derive: Derive): Promise<PinTry> {
  const tried = await tryPin(store, old, derive, now);
  if (tried.is !== 'right') return tried;
  const derived = await derive(next, salt, PIN_ITERATIONS);
  const fresh: PinRecord = { salt, derived, iterations: PIN_ITERATIONS, wrong: 0, lastWrong: 0 };
  await store.put('shop', 'pin', fresh);
  return tried;
}
