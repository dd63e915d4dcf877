import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';

const RESULTS = process.env['LACEWING_RESULTS'] ?? fileURLToPath(new URL('../../test-results', import.meta.url));

/** Leaves figures beside the other reports. */
export function report(name: string, figures: unknown): void {
  mkdirSync(RESULTS, { recursive: true });
  writeFileSync(join(RESULTS, `${name}.json`), `${JSON.stringify(figures, null, 2)}\n`);
}

/**
 * Milliseconds from a tap to the frame that shows the pairs it moved, one for each time that they moved. Another ticket
 * coming to the front is no move.
 */
export async function watchMoves(page: Page): Promise<() => Promise<readonly number[]>> {
  await page.evaluate(() => {
    const shownNow = () => ({
      ticket: document.querySelector('lw-ticket #ask')?.textContent ?? '',
      // At the top of the ticket, or in the line-up where that names them itself.
      pairs: [...document.querySelectorAll('lw-ticket .glance .name, lw-line-ups .pair h3 span:last-child')]
        .map((name) => name.textContent)
        .join(),
    });
    const took: number[] = [];
    let tapped = 0;
    let shown = shownNow();
    document.addEventListener(
      'click',
      ({ timeStamp }) => {
        tapped = timeStamp;
      },
      { capture: true },
    );
    new MutationObserver(() => {
      const now = shownNow();
      if (now.pairs === '' || (now.pairs === shown.pairs && now.ticket === shown.ticket)) return;
      const moved = now.ticket === shown.ticket;
      shown = now;
      const since = tapped;
      if (moved) requestAnimationFrame(() => took.push(Math.round(performance.now() - since)));
    }).observe(document.body, { childList: true, characterData: true, subtree: true });
    Object.assign(window, { moves: took });
  });
  return () => page.evaluate(() => Reflect.get(window, 'moves') as number[]);
}
