import { expect, type Page, test } from '@playwright/test';
import { openState } from './screens.ts';
import { tap } from './walk.ts';

test.use({ reducedMotion: 'reduce' });

const asked = (page: Page) => page.locator('lw-question');
const start = async (page: Page): Promise<void> => {
  await page.goto('');
  await tap(page.getByRole('button', { name: 'Start', exact: true }));
  await expect(asked(page)).toHaveAttribute('data-question', 'reason');
  await expect(page.locator('.ticket span')).toBeVisible();
};

test('somebody whose page was loaded anew finds their language again, and the ticket the answers go with', async ({
  page,
}) => {
  await start(page);
  await tap(page.locator('lw-question .choice').first());
  const ticket = (await page.locator('.ticket strong').textContent())?.trim() ?? '';
  await page.locator('.stub .speech').selectOption('de');
  await expect(page.locator('#ask')).toHaveText('In welchem Regal sollen wir suchen?');
  await page.reload();
  await expect(page.locator('html')).toHaveAttribute('lang', 'de');
  await expect(page.locator('lw-welcome')).toContainText(`Diese Antworten gehören zum Zettel ${ticket}.`);
  await tap(page.getByRole('button', { name: 'Weitermachen', exact: true }));
  await expect(page.locator('#ask')).toHaveText('In welchem Regal sollen wir suchen?');
  await expect(page.locator('.ticket strong')).toHaveText(ticket);
});

test('the browser’s own Back goes back one question, never leaves the kiosk, and remembers no answer', async ({
  page,
}) => {
  await page.goto('about:blank');
  await start(page);
  await expect.poll(() => page.evaluate(() => history.state)).toBe('kiosk');
  const pages = await page.evaluate(() => history.length);
  await tap(page.locator('lw-question .choice').first());
  await expect(asked(page)).toHaveAttribute('data-question', 'shelf');
  await page.evaluate(() => history.back());
  await expect(asked(page)).toHaveAttribute('data-question', 'reason');
  await expect.poll(() => page.evaluate(() => history.state)).toBe('kiosk');
  await page.evaluate(() => history.back());
  await expect(page.locator('lw-welcome')).toBeVisible();
  for (let more = 0; more < 3; more += 1) {
    await expect.poll(() => page.evaluate(() => history.state)).toBe('kiosk');
    await page.evaluate(() => history.back());
    await page.waitForTimeout(150);
  }
  await expect(page.locator('lw-welcome')).toBeVisible();
  expect(await page.evaluate(() => history.length)).toBe(pages);
});

test('whoever changes an answer at review comes back to its line, in view and marked', async ({ page }) => {
  await openState(page, 'review');
  await tap(
    page
      .getByRole('button', { name: 'Change: What do you want to spend?' })
      .or(page.locator('.review .link').last())
      .last(),
  );
  const question = (await asked(page).getAttribute('data-question')) ?? '';
  expect(question).not.toBe('');
  await tap(page.locator('[data-act="back"]'));
  const row = page.locator('[data-came-back]');
  await expect(row).toBeFocused();
  await expect(row).toBeInViewport({ ratio: 1 });
  await expect(page.locator('.changed')).toHaveCount(0);
  await tap(row.locator('.link'));
  await expect(asked(page)).toHaveAttribute('data-question', question);
  for (const box of await page.locator('lw-question input').all())
    if (!(await box.isChecked())) await tap(box.locator('..'));
  await tap(page.locator('.foot .main'));
  await expect(row).toBeFocused();
  await expect(row).toBeInViewport({ ratio: 1 });
  await expect(row.locator('.changed')).toHaveText('Changed');
});

test('whoever is done is told what the fitter sees, and the button is for the next person', async ({ page }) => {
  await openState(page, 'handed');
  await expect(page.locator('main')).toContainText(
    'The fitter can now see all your answers, including any about your health.',
  );
  await expect(page.locator('[data-act="done"]')).toHaveText('Next person, please');
  await openState(page, 'card');
  await tap(page.locator('[data-act="done"]'));
  await expect(page.locator('main')).toContainText('your answers, but not those about your health.');
});

test('upright, the way back keeps its width once the result’s own look has come', async ({ page }) => {
  await page.setViewportSize({ width: 800, height: 1280 });
  await start(page);
  const width = () => page.locator('[data-act="back"]').evaluate((button) => button.getBoundingClientRect().width);
  const before = await width();
  await page.waitForFunction(() =>
    [...document.styleSheets].some((sheet) =>
      [...sheet.cssRules].some((rule) => rule.cssText.startsWith('lw-outcome')),
    ),
  );
  expect(await width()).toBe(before);
});
