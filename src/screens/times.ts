import { wipeOver } from '../storage/retention.ts';
import { keptSettings, type Settings } from '../storage/shop-settings.ts';
import type { Store } from '../storage/store.ts';
import type { Kiosk } from './customer/kiosk.ts';

/** How often visits whose time is over are looked for, milliseconds. */
const LOOK_EVERY = 60_000;

/** Holds a kiosk to the times its shop set: when it asks whether somebody is there, and how long visits are kept. */
export async function keepTimes(kiosk: Kiosk, store: Store): Promise<void> {
  const use = ({ quiet, warning }: Settings): void => {
    kiosk.idleTimes = { quiet: quiet * 1000, warning: warning * 1000 };
  };
  kiosk.addEventListener('settings-changed', (event) => use((event as CustomEvent<Settings>).detail));
  const look = async (): Promise<void> => {
    const settings = await keptSettings(store);
    use(settings);
    await wipeOver(store, new Date(), settings.keepMinutes).catch(() => []);
  };
  await look();
  setInterval(() => void look(), LOOK_EVERY);
}
