import { expect, type Page, test } from '@playwright/test';
import { openState } from './screens.ts';

const SIZES = [
  { width: 1280, height: 800 },
  { width: 800, height: 1280 },
];

test.use({ reducedMotion: 'reduce' });

/** The customer's own button for it is on the screen whole, with nothing over it, before anybody scrolls. */
const inReach = async (page: Page, name: string): Promise<void> => {
  const button = page.locator('lw-question').getByRole('button', { name, exact: true });
  await expect(button).toBeInViewport({ ratio: 1 });
  const clear = await button.evaluate((element) => {
    const { left, top, width, height } = element.getBoundingClientRect();
    return element.contains(document.elementFromPoint(left + width / 2, top + height / 2));
  });
  expect(clear, `nothing lies over “${name}”`).toBe(true);
};

for (const [state, answer] of [
  ['ask-activity', 'Something else'],
  ['ask-second-activity', 'No, nothing else'],
  ['ask-now-kind', 'Not sure'],
] as const) {
  test(`“${answer}” of ${state} is in reach without scrolling, and answers at once`, async ({ page }) => {
    for (const size of SIZES) {
      await page.setViewportSize(size);
      await openState(page, state);
      await inReach(page, answer);
      expect(await page.evaluate(() => scrollY)).toBe(0);
    }
    await page.getByRole('button', { name: answer, exact: true }).tap();
    await expect(page.locator(`lw-question[data-question="${state.slice('ask-'.length)}"]`)).toHaveCount(0);
  });
}

test('whoever comes back to what they do most goes on with one tap, and sees what they had said', async ({ page }) => {
  await openState(page, 'ask-activity');
  await expect(page.locator('lw-question .foot')).toContainText('Running on trails');
  await inReach(page, 'Continue');
  await page.getByRole('button', { name: 'Running', exact: true }).tap();
  await inReach(page, 'Continue');
  await page.getByRole('button', { name: 'Continue', exact: true }).tap();
  await expect(page.locator('lw-question')).not.toHaveAttribute('data-question', 'activity');
});
