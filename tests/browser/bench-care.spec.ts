import { expect, test } from '@playwright/test';
import { en, showView, tryOnWords } from './at-the-bench.ts';
import { openState } from './screens.ts';
import { tap } from './walk.ts';

// Movement has its own checks; without it no tap waits for a page to come to rest.
test.use({ reducedMotion: 'reduce' });

test('a colleague who takes over somebody cleared by a clinician is told so, and that numb feet cannot tell', async ({
  page,
}) => {
  test.setTimeout(90_000);
  await openState(page, 'bench-clearance');
  await page.locator('form.clearance input[name="reason"]').fill('Foot clinic: may try shoes');
  await tap(page.locator('form.clearance button[type="submit"]'));
  const head = page.locator('lw-ticket .ticket-head');
  await expect(head).toContainText(en.clearance.gently);
  await expect(head).not.toContainText(en.hold.none);
  await expect(head).toContainText('Feet feel numb or feel very little');
  await showView(page, 'feet');
  await expect(page.locator('.feel-little')).toContainText(tryOnWords('en')['feel-little']);
  await showView(page, 'line-up');
  await expect(page.locator('.feel-little')).toHaveCount(0);

  // In the list, where others may read along: that care is needed, not why.
  await tap(page.locator('.tab[data-tab="tickets"]'));
  const row = page.locator('[data-ticket="otter 5"]');
  await expect(row).toContainText(en.clearance.gently);
  await expect(row).not.toContainText('numb');
});
