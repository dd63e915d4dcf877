import { keptSettings, type Settings } from '../storage/shop-settings.ts';
import type { Kiosk } from './customer/kiosk.ts';

/** Has a kiosk ask whether somebody is there at the times its shop set, and at new ones as soon as they are set. */
export async function keepTimes(kiosk: Kiosk): Promise<void> {
  const use = ({ quiet, warning }: Settings): void => {
    kiosk.idleTimes = { quiet: quiet * 1000, warning: warning * 1000 };
  };
  kiosk.addEventListener('settings-changed', (event) => use((event as CustomEvent<Settings>).detail));
  use(await keptSettings(kiosk.store));
}
