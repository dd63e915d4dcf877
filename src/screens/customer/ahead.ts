import type { ReactiveControllerHost } from 'lit';
import type { Shop } from '../../card/shop.ts';
import type { LineClient } from '../../worker/line-client.ts';
import { fetchDrawings } from '../parts/drawing.ts';
import { quiet } from '../parts/quiet.ts';
import type { Spoken } from './spoken.ts';

/** What only the result and the bench need. */
export interface Rest {
  readonly line: LineClient;
  readonly shop: Shop;
}

/** Rules, words of the result, worker and stock: fetched once somebody has begun, ready before they are done. */
export class Ahead {
  readonly #host: ReactiveControllerHost;
  readonly #spoken: Spoken;
  readonly #load: () => Promise<Rest>;
  readonly #failed: () => void;
  #rest: Rest | undefined;
  #fetching: Promise<void> | undefined;

  constructor(host: ReactiveControllerHost, spoken: Spoken, load: () => Promise<Rest>, failed: () => void) {
    this.#host = host;
    this.#spoken = spoken;
    this.#load = load;
    this.#failed = failed;
  }

  get rest(): Rest | undefined {
    return this.#rest;
  }

  /** The shop changed what it says of itself: so does every card from now on. */
  retell(shop: Shop): void {
    if (this.#rest) this.#rest = { ...this.#rest, shop };
  }

  prepare(): Promise<void> {
    if (this.#rest || !this.#spoken.words) return Promise.resolve();
    this.#fetching ??= this.#fetch()
      .catch((reason: unknown) => {
        console.error(reason);
        this.#failed();
      })
      .finally(() => {
        this.#fetching = undefined;
      });
    return this.#fetching;
  }

  /** One thing after another, each when the page rests, so that no tap waits for them. */
  async #fetch(): Promise<void> {
    const spoken = this.#spoken;
    await quiet();
    // Plurals and numbers take their rules from the browser at first use, longer than a page takes to draw.
    spoken.words?.say('screen.found', { count: 0 });
    spoken.words?.number(0);
    await quiet();
    await fetchDrawings('floors');
    await quiet();
    const rest = await this.#load();
    await quiet();
    const words = await spoken.whole();
    await quiet();
    await import('./outcome.ts');
    this.#rest = rest;
    await spoken.take(words);
    this.#host.requestUpdate();
    void rest.line.warm(spoken.language);
  }
}
