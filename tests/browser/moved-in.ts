import type { Page } from '@playwright/test';

/** Milliseconds from a tap to the frame that shows the pairs it moved, one for each time that they moved. */
export async function watchMoves(page: Page): Promise<() => Promise<readonly number[]>> {
  await page.evaluate(() => {
    const pairs = () => document.querySelector('lw-ticket .glance ol')?.textContent ?? '';
    const took: number[] = [];
    let tapped = 0;
    let shown = pairs();
    document.addEventListener(
      'click',
      ({ timeStamp }) => {
        tapped = timeStamp;
      },
      { capture: true },
    );
    new MutationObserver(() => {
      const now = pairs();
      if (now === shown || now === '') return;
      shown = now;
      const since = tapped;
      requestAnimationFrame(() => took.push(Math.round(performance.now() - since)));
    }).observe(document.body, { childList: true, characterData: true, subtree: true });
    Object.assign(window, { moves: took });
  });
  return () => page.evaluate(() => Reflect.get(window, 'moves') as number[]);
}
