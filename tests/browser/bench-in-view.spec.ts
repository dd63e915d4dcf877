import { expect, test } from '@playwright/test';
import { showView } from './at-the-bench.ts';
import { openState } from './screens.ts';
import { tap } from './walk.ts';

// Movement has its own checks; without it no tap waits for a page to come to rest.
test.use({ reducedMotion: 'reduce' });

/** A tablet lying and standing, CSS pixels: a common ten-inch screen (from memory). */
const TABLETS = [
  { width: 1280, height: 800 },
  { width: 800, height: 1280 },
];

for (const size of TABLETS) {
  test(`a fitter on a tablet of ${size.width} by ${size.height} types the first length, and notes the first pair, without scrolling`, async ({
    page,
  }) => {
    test.setTimeout(90_000);
    await page.setViewportSize(size);
    await openState(page, 'bench-profile');
    // Notes left open on one view do not push down the next.
    await tap(page.locator('lw-bench-cautions details summary'));
    await showView(page, 'measure');
    await expect(page.locator('lw-measure-feet input[name="length-right"]')).toBeInViewport({ ratio: 1 });
    await tap(page.locator('lw-bench-cautions details summary'));
    await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight));
    await showView(page, 'feet');
    await expect(page.locator('label:has(input[name="try-on-size"])').last()).toBeInViewport({ ratio: 1 });
    await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight));
    for (const stays of ['lw-ticket h1', '.views [data-view="decide"]', '[data-pair]']) {
      await expect(page.locator(stays).first()).toBeInViewport({ ratio: 1 });
    }
  });
}
