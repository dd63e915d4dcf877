import { expect, test } from '@playwright/test';
import { LANGUAGES, openState, speakState } from './screens.ts';

test.use({ reducedMotion: 'reduce' });

test('a size given before is shown as it was typed', async ({ page }) => {
  await openState(page, 'ask-now-size');
  await expect(page.locator('lw-question input[type="text"]')).toHaveValue('39');
});

for (const [state, width] of [
  ['result-pairs', 800],
  ['bench-line-up', 800],
  ['result-pairs', 1280],
] as const) {
  test(`${state} at ${width} px leaves no hole beside the last pair`, async ({ page }) => {
    await page.setViewportSize({ width, height: 1280 });
    await openState(page, state);
    const [list, last] = await page
      .locator('.line-up .pairs')
      .first()
      .evaluate((pairs) => [
        pairs.getBoundingClientRect().right,
        pairs.lastElementChild?.getBoundingClientRect().right ?? 0,
      ]);
    expect(Math.abs((list ?? 0) - (last ?? 0))).toBeLessThan(3);
  });
}

test('on the smallest tablet upright the tag keeps its controls in one line, in every language', async ({ page }) => {
  await page.setViewportSize({ width: 768, height: 1024 });
  await openState(page, 'ask-reason');
  for (const language of LANGUAGES) {
    await speakState(page, language);
    // As wide as a ticket gets.
    await page.locator('.ticket strong').evaluate((ticket) => {
      ticket.textContent = 'harbour 128';
    });
    const middles = await page.locator('.stub-foot > *').evaluateAll((controls) =>
      controls.map((control) => {
        const { top, bottom } = control.getBoundingClientRect();
        return Math.round((top + bottom) / 2);
      }),
    );
    expect(Math.max(...middles) - Math.min(...middles), language).toBeLessThan(4);
  }
});
