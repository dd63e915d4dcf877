import { expect, type Page, test } from '@playwright/test';
import { givePin } from './at-the-bench.ts';
import { cardCode } from './card-codes.ts';
import { openState } from './screens.ts';
import { tap } from './walk.ts';

test.use({ reducedMotion: 'reduce' });

/** The page that went to the printer. A browser without a screen shows no dialog, and would take the page away at once. */
const printed = (page: Page) => page.locator('iframe.print-frame').last().contentFrame().locator('html');
test.beforeEach(({ page }) =>
  page.addInitScript(() => {
    window.print = () => undefined;
  }),
);

async function expectArabicPage(page: Page): Promise<void> {
  await expect(printed(page)).toHaveAttribute('dir', 'rtl');
  await expect(printed(page).locator('article.card')).toHaveAttribute('lang', 'ar');
}

test('in Arabic the labels of a box are read from right to left, each whole', async ({ page }) => {
  for (const [state, labels] of [
    ['result-pairs', 'lw-result .boxes .soft'],
    ['bench-line-up', '.line-up .boxes .soft'],
    ['bench-chosen', 'lw-decide label:has(input[name="chosen"])'],
  ] as const) {
    await openState(page, state, 'ar');
    const places = await page
      .locator(labels)
      .first()
      .locator('bdi')
      .evaluateAll((all) =>
        all.map((label) => {
          const { top, right } = label.getClientRects()[0] ?? new DOMRect();
          return { top: Math.round(top), right: Math.round(right) };
        }),
      );
    expect(places.length, state).toBeGreaterThan(1);
    // Line by line, and in each from right to left.
    expect(places, state).toEqual([...places].sort((a, b) => a.top - b.top || b.right - a.right));
  }
});

test('a customer who reads Arabic prints their card as a page', async ({ page }) => {
  await openState(page, 'card', 'ar');
  await expect(page.locator('[data-act="save"]')).toHaveCount(0);
  await tap(page.locator('[data-act="print"]'));
  await expectArabicPage(page);
});

test('a fitter who reads English prints an Arabic card as a page, and saves their own copy; the shop sees a sample of both', async ({
  page,
}) => {
  await page.goto(`/#c=${cardCode('nurse-on-tiles', { language: 'ar' })}`);
  await givePin(page);
  const ticket = page.locator('lw-ticket');
  await expect(ticket.locator('.glance li').first()).toBeVisible();
  await page.keyboard.press('d');
  await ticket.locator('lw-decide input[name="chosen"]').first().check();
  const button = (name: string) => ticket.locator(`[data-card="${name}"]`);
  await expect(button('fitter-save')).toBeVisible();
  await expect(button('customer-print')).toBeVisible();
  await expect(button('customer-save')).toHaveCount(0);
  await tap(button('customer-print'));
  await expectArabicPage(page);

  await page.keyboard.press('t');
  await tap(page.locator('.tabs .tab').last());
  await tap(page.locator('[data-place="settings"]'));
  await expect(page.locator('[data-act="preview-pdf"]')).toBeVisible();
  await page.locator('.bench-acts .speech').selectOption('ar');
  await expect(page.locator('[data-act="preview-print"]')).toBeVisible();
  await expect(page.locator('[data-act="preview-pdf"]')).toHaveCount(0);
  await tap(page.locator('[data-act="preview-print"]'));
  await expectArabicPage(page);
});
