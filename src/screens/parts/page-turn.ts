import type { ReactiveController, ReactiveControllerHost } from 'lit';

/**
 * Turns the page as a reader expects: whenever `placeNow` changes, the new page stands at its top and its heading
 * (`#ask`) has the focus; or the row somebody came back to (`data-came-back`) has it, in view. The first page takes no
 * focus from anybody.
 */
export class PageTurn implements ReactiveController {
  readonly #host: ReactiveControllerHost & HTMLElement;
  readonly #placeNow: () => string;
  #shown = '';

  constructor(host: ReactiveControllerHost & HTMLElement, placeNow: () => string) {
    this.#host = host;
    this.#placeNow = placeNow;
    host.addController(this);
  }

  /** Something else was in front: the next page comes up like the first. */
  forget(): void {
    this.#shown = '';
  }

  /** Taking away what has the focus makes the browser lay out the page at once, half changed; so the focus goes first. */
  hostUpdate(): void {
    if (this.#placeNow() === this.#shown || this.#shown === '') return;
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
  }

  hostUpdated(): void {
    const place = this.#placeNow();
    if (place === this.#shown) return;
    const first = this.#shown === '';
    this.#shown = place;
    if (first) return;
    // With the frame that draws the page: asked for sooner, the page would be laid out twice.
    requestAnimationFrame(() => {
      window.scrollTo(0, 0);
      const row = this.#host.querySelector<HTMLElement>('[data-came-back]');
      (row ?? this.#host.querySelector<HTMLElement>('#ask'))?.focus({ preventScroll: true });
      row?.scrollIntoView({ block: 'center' });
    });
  }
}
