import { expect, test } from '@playwright/test';
import { benchWords, showView } from './at-the-bench.ts';
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

for (const [language, size] of [
  ['en', TABLETS[0]],
  ['de', TABLETS[1]],
] as const) {
  test(`Undo stands at the same place on every tab of a ticket in ${language}, and says what it takes back`, async ({
    page,
  }) => {
    test.setTimeout(90_000);
    if (size) await page.setViewportSize(size);
    await openState(page, 'bench-profile', language);
    const undo = page.locator('lw-ticket .undo');
    await expect(undo).toHaveCount(1);
    const place = await undo.boundingBox();
    for (const view of ['measure', 'line-up', 'feet', 'decide', 'profile'] as const) {
      await showView(page, view);
      expect(await undo.boundingBox(), view).toEqual(place);
    }
    const { undo: seen } = benchWords(language);
    await showView(page, 'measure');
    await expect(undo).toBeDisabled();
    const length = page.locator('input[name="length-left"]');
    const before = await length.inputValue();
    await length.fill('248');
    await length.blur();
    await expect(undo).toBeEnabled();
    await expect(undo).toHaveText(seen);
    await expect(undo).toHaveAccessibleName(new RegExp(`^${seen}: .{5}`));
    expect(await undo.boundingBox()).toEqual(place);
    await tap(undo);
    await expect(length).toHaveValue(before);
    await expect(undo).toBeDisabled();
  });
}

test('a fitter who takes back a measure from another tab is told that it is gone', async ({ page }) => {
  await openState(page, 'bench-profile');
  await showView(page, 'measure');
  const length = page.locator('input[name="length-left"]');
  const before = await length.inputValue();
  await length.fill('248');
  await length.blur();
  await showView(page, 'profile');
  const undo = page.locator('lw-ticket .undo');
  await expect(undo).toHaveAccessibleName('Undo: Measure');
  await tap(undo);
  await expect(page.locator('.taken-back')).toHaveText('Taken back: Measure');
  await showView(page, 'measure');
  await expect(page.locator('.taken-back')).toHaveText('');
  await expect(length).toHaveValue(before);
});
