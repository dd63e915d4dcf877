import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { writeCardCode } from '../../src/visit/card-code.ts';
import { freshVisit } from '../../src/visit/fresh-visit.ts';
import { openState } from './screens.ts';
import { flow, storyNamed, tap } from './walk.ts';

test.use({ reducedMotion: 'reduce' });

const rows = (file: string): readonly { id: string; group: string }[] =>
  JSON.parse(readFileSync(new URL(`../../flows/fitting/${file}.json`, import.meta.url), 'utf8'));
const tables = { activities: rows('activities'), floors: rows('floors'), 'shoe-kinds': rows('shoe-kinds') };

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

test('a customer who reads Arabic prints their card as a page', async ({ page }) => {
  await openState(page, 'card', 'ar');
  await expect(page.locator('[data-act="save"]')).toHaveCount(0);
  await tap(page.locator('[data-act="print"]'));
  await expectArabicPage(page);
});

test('a fitter who reads English prints an Arabic card as a page, and saves their own copy; the shop sees a sample of both', async ({
  page,
}) => {
  const visit = freshVisit(flow, 'ar', storyNamed('nurse-on-tiles').answers);
  await page.goto(`/#c=${writeCardCode(visit, 'none', flow, tables)}`);
  await page.locator('input[name="pin"]').fill('2468');
  await page.locator('input[name="again"]').fill('2468');
  await page.locator('input[name="initials"]').fill('LT');
  await tap(page.locator('lw-pin button[type="submit"]'));
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
  await tap(page.locator('button[lang="ar"]'));
  await expect(page.locator('[data-act="preview-print"]')).toBeVisible();
  await expect(page.locator('[data-act="preview-pdf"]')).toHaveCount(0);
  await tap(page.locator('[data-act="preview-print"]'));
  await expectArabicPage(page);
});
