import type { Store } from './store.ts';

/**
 * The interview in progress, saved at each answer.
 *
 * Screens paint first; writes go through one queue in order, and only the newest waiting record is written.
 * `finish` waits for the queue, then clears, so that no late write revives a finished interview.
 */
export class DraftKeeper<T> {
  readonly #store: Store;
  #waiting: T | undefined;
  #running: Promise<void> = Promise.resolve();
  #finished = false;
  #failed: ((reason: unknown) => void) | undefined;

  constructor(store: Store, failed?: (reason: unknown) => void) {
    this.#store = store;
    this.#failed = failed;
  }

  /** Queues the record; returns at once. */
  save(record: T): void {
    if (this.#finished) return;
    this.#waiting = record;
    this.#running = this.#running.then(() => this.#write());
  }

  async #write(): Promise<void> {
    const record = this.#waiting;
    if (record === undefined) return;
    this.#waiting = undefined;
    try {
      await this.#store.put('draft', 'draft', record);
    } catch (reason) {
      this.#failed?.(reason);
    }
  }

  load(): Promise<unknown> {
    return this.#store.get('draft', 'draft');
  }

  /** When it resolves, every answer so far is written. */
  flush(): Promise<void> {
    return this.#running;
  }

  /** Ends this interview's draft: waits for writes under way, then removes it. */
  async finish(): Promise<void> {
    this.#finished = true;
    await this.flush();
    await this.#store.delete('draft', 'draft');
  }
}
