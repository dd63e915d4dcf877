/** Stands in the history of the browser in place of a page; it tells nothing of anybody. */
const INSIDE = 'kiosk';

/**
 * The browser's Back, also the swipe from a tablet's edge, does what the Back on the screen does, and nothing where
 * there is none. One entry more than the page's own is kept ahead, so that going back never leaves the kiosk.
 */
export function holdBack(host: HTMLElement): void {
  if (history.state !== INSIDE) history.pushState(INSIDE, '');
  addEventListener('popstate', () => {
    if (history.state === INSIDE) return;
    history.forward();
    if (!document.querySelector('dialog[open]')) host.querySelector<HTMLElement>('[data-act="back"]')?.click();
  });
}
