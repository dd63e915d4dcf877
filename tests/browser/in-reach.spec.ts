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

/** All of it is on the screen, above the bottom bar. */
const inSight = (page: Page, row: string) => async (): Promise<boolean> =>
  page.locator(row).evaluate((element) => {
    const { top, bottom } = element.getBoundingClientRect();
    const bar = document.querySelector('.sticky')?.getBoundingClientRect().top ?? innerHeight;
    return top >= 0 && bottom <= bar;
  });

test('whoever marks a place on the body sees the two lines that ask about it', async ({ page }) => {
  for (const size of SIZES) {
    await page.setViewportSize(size);
    await openState(page, 'ask-body');
    for (const region of ['knee', 'heel']) {
      await page.locator(`label:has(input[name="${region}"])`).tap();
      await expect.poll(inSight(page, `[data-row="seen-${region}"]`)).toBe(true);
      await expect.poll(inSight(page, `[data-row="when-${region}"]`)).toBe(true);
    }
  }
});

test('whoever goes on with a line open is led to that line, and on once all are answered', async ({ page }) => {
  await openState(page, 'ask-body');
  await page.locator('label:has(input[name="heel"])').tap();
  await page.evaluate(() => scrollTo(0, 0));
  const onward = page.getByRole('button', { name: 'Continue', exact: true });
  for (const row of ['when-heel', 'seen-heel']) {
    await onward.tap();
    await expect(page.locator(`input[name="${row}"]`).first()).toBeFocused();
    await expect.poll(inSight(page, `[data-row="${row}"]`)).toBe(true);
    await page.locator(`[data-row="${row}"] label`).first().tap();
  }
  await onward.tap();
  await expect(page.locator('lw-question')).not.toHaveAttribute('data-question', 'body');
});

test('whoever is asked how often sees every floor they ticked at once, and finds the ticks on the way back', async ({
  page,
}) => {
  for (const size of SIZES) {
    await page.setViewportSize(size);
    await openState(page, 'ask-floors');
    const ticks = page.locator('lw-shares input[type="checkbox"]:checked');
    const before = await ticks.count();
    await page.locator('label:has(input[name="clay-court"])').tap();
    await expect(page.locator('[data-row]')).toHaveCount(0);
    await page.locator('.foot .main').tap();
    const rows = page.locator('[data-row]');
    await expect(rows).toHaveCount(before + 1);
    for (const row of await rows.all()) await expect(row).toBeInViewport({ ratio: 1 });
    const bar = (await page.locator('.sticky').boundingBox())?.y ?? 0;
    const last = await rows.last().boundingBox();
    expect((last?.y ?? bar) + (last?.height ?? 0)).toBeLessThanOrEqual(bar);
    await page.locator('[data-act="back"]').tap();
    await expect(ticks).toHaveCount(before + 1);
  }
});

test('whoever says how the new pair should feel sees every wish at once on a tablet lying down', async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  await openState(page, 'ask-liking');
  for (const row of await page.locator('.rows > fieldset').all()) await expect(row).toBeInViewport({ ratio: 1 });
  const bar = (await page.locator('.sticky').boundingBox())?.y ?? 0;
  const last = await page.locator('.rows > fieldset').last().boundingBox();
  expect((last?.y ?? bar) + (last?.height ?? 0)).toBeLessThanOrEqual(bar);
});

test('why one question was asked is closed again on the next', async ({ page }) => {
  await openState(page, 'why-we-ask');
  await expect(page.locator('.why')).toHaveAttribute('open');
  await page.locator('.choice').first().tap();
  await expect(page.locator('lw-question')).toHaveAttribute('data-question', 'shelf');
  await expect(page.locator('.why')).not.toHaveAttribute('open');
});

test('a third thing that matters most is not taken: the two stay, and it is said', async ({ page }) => {
  await openState(page, 'ask-matters-most');
  const boxes = page.locator('lw-question input');
  for (const box of await boxes.all()) if (await box.isChecked()) await box.tap();
  for (const at of [0, 3, 5]) await page.locator('lw-question label').nth(at).tap();
  expect(
    await boxes.evaluateAll((all) => all.flatMap((box, at) => ((box as HTMLInputElement).checked ? [at] : []))),
  ).toEqual([0, 3]);
  await expect(page.locator('lw-question [role="status"]')).toHaveText(/You have picked 2\. Tap one/);
  await page.locator('lw-question label').nth(0).tap();
  await page.locator('lw-question label').nth(5).tap();
  await expect(boxes.nth(5)).toBeChecked();
});
