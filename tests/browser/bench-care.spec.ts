import { expect, test } from '@playwright/test';
import { en, givePin, override, showView, tryOnWords } from './at-the-bench.ts';
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

test('the bench speaks the fitters’ language, and whoever comes next finds the kiosk in its own', async ({ page }) => {
  test.setTimeout(90_000);
  await page.goto('?language=de');
  await tap(page.locator('[data-act="staff"]'));
  await expect(page.locator('lw-pin h1')).toHaveText(en.pin.setTitle);
  await givePin(page);
  await expect(page.locator('lw-tickets h1')).toHaveText(en.tickets.title);
  await tap(page.locator('[data-act="lock"]'));
  await page.locator('lw-welcome').waitFor();
  await expect(page.locator('html')).toHaveAttribute('lang', 'de');
  await expect(page.locator('[data-act="staff"]')).toHaveText('Für das Personal');
});

test('where nothing may be sold nobody is told to choose a pair, and a stop tapped by mistake says who can take it back', async ({
  page,
}) => {
  test.setTimeout(90_000);
  await openState(page, 'bench-refer');
  await override(page, 'signs', 'None of these', 'mistapped');
  await expect(page.locator('[data-question="signs"] .stop-stays')).toHaveText(en.clearance.never);
  await showView(page, 'decide');
  await expect(page.locator('lw-decide')).toContainText(en.decide.whyFirst);
  await expect(page.locator('lw-decide')).not.toContainText('Choose a pair');
  await expect(page.locator('lw-decide input[name="chosen"]')).toHaveCount(3);
});
