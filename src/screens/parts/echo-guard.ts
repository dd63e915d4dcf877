import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { isEcho, type Tap } from './quick-taps.ts';

/**
 * Drops the second half of a double tap where the page has turned in between: it was not meant for what came up.
 * `pageNow` changes whenever other things stand on the screen than before.
 */
export class EchoGuard implements ReactiveController {
  readonly #host: ReactiveControllerHost & HTMLElement;
  readonly #pageNow: () => string;
  #last: Tap | undefined;

  constructor(host: ReactiveControllerHost & HTMLElement, pageNow: () => string) {
    this.#host = host;
    this.#pageNow = pageNow;
    host.addController(this);
  }

  hostConnected(): void {
    this.#host.addEventListener('click', this.#drop, { capture: true });
  }

  hostDisconnected(): void {
    this.#host.removeEventListener('click', this.#drop, { capture: true });
  }

  readonly #drop = (event: MouseEvent): void => {
    if (!event.isTrusted || event.detail === 0) return;
    const tap = { at: event.timeStamp, x: event.clientX, y: event.clientY, page: this.#pageNow() };
    if (isEcho(this.#last, tap)) {
      event.preventDefault();
      event.stopImmediatePropagation();
    } else this.#last = tap;
  };
}
