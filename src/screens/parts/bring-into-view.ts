/**
 * Scrolls no further than it must to show what came up below the window, slowly unless somebody asked for less motion.
 * Whoever goes by keyboard keeps what has the focus in sight: the next stop is the row itself.
 */
export function bringIntoView(element: Element | null | undefined): void {
  if (!element || document.querySelector('main :focus-visible')) return;
  const still = matchMedia('(prefers-reduced-motion: reduce)').matches;
  element.scrollIntoView({ block: 'nearest', behavior: still ? 'auto' : 'smooth' });
}
