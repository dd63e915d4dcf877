import { expect, test } from '@playwright/test';
import { en, GLANCE, givePin, pairNames, toResult } from './at-the-bench.ts';
import { axeFindsNothing } from './axe-faults.ts';
import { storyNamed, tap } from './walk.ts';

// Movement has its own checks; without it no tap waits for a page to come to rest.
test.use({ reducedMotion: 'reduce' });

test('a fitter who stands by opens the ticket from the customer’s last page, behind the PIN', async ({ page }) => {
  test.setTimeout(90_000);
  await page.goto('');
  const shown = await toResult(page, storyNamed('same-again').answers);
  for (const act of ['hand', 'handYes']) await tap(page.locator(`[data-act="${act}"]`));
  const ticket = (await page.locator('.stub .ticket strong').textContent()) ?? '';
  await expect(page.locator('[data-act="bench"]')).toHaveText(en.openHere);
  await axeFindsNothing(page);
  await tap(page.locator('[data-act="bench"]'));
  await page.locator('lw-pin').waitFor();
  await expect(page.locator('lw-bench')).not.toContainText(shown[0] ?? '');
  await givePin(page);
  await expect(page.locator('lw-ticket h1')).toHaveText(ticket);
  expect(await pairNames(page, GLANCE)).toEqual(shown);
  await tap(page.locator('[data-act="lock"]'));
  await expect(page.locator('lw-welcome')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Carry on', exact: true })).toHaveCount(0);
});
