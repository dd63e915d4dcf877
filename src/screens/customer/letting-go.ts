import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Store } from '../../storage/store.ts';

/** How often visits are looked through for those whose time is over, milliseconds. Our choice. */
const LET_GO_EVERY = 60_000;

/** Visits whose time is over go, whether or not a fitter looks. */
export class LettingGo implements ReactiveController {
  readonly #store: () => Store;
  #timer: ReturnType<typeof setInterval> | undefined;

  constructor(host: ReactiveControllerHost, store: () => Store) {
    this.#store = store;
    host.addController(this);
  }

  hostConnected(): void {
    this.#timer = setInterval(() => void this.#letGo(), LET_GO_EVERY);
  }

  hostDisconnected(): void {
    clearInterval(this.#timer);
  }

  async #letGo(): Promise<void> {
    const [{ keptSettings }, { wipeOver }] = await Promise.all([
      import('../../storage/shop-settings.ts'),
      import('../../storage/retention.ts'),
    ]);
    const { keepMinutes } = await keptSettings(this.#store());
    await wipeOver(this.#store(), new Date(), keepMinutes).catch(() => []);
  }
}
