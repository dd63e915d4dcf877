import { expect, type Page, test } from '@playwright/test';
import { openState } from './screens.ts';
import { tap, words } from './walk.ts';

test.use({ reducedMotion: 'reduce' });

/** Large text, more contrast and German, as a customer sets them for themselves. */
async function setUp(page: Page): Promise<void> {
  await tap(page.getByRole('button', { name: 'Larger text', exact: true }));
  await tap(page.getByRole('button', { name: 'More contrast', exact: true }));
  await page.locator('.stub .speech').selectOption('de');
  await expect(page.locator('html')).toHaveAttribute('lang', 'de');
  await expect(page.locator('html')).toHaveAttribute('data-text', 'large');
  await expect(page.locator('html')).toHaveAttribute('data-contrast', 'more');
}

async function isAsAtFirst(page: Page): Promise<void> {
  await page.locator('lw-welcome').waitFor();
  const root = page.locator('html');
  await expect(root).toHaveAttribute('data-text', 'normal');
  await expect(root).toHaveAttribute('data-contrast', 'normal');
  await expect(root).toHaveAttribute('lang', 'en');
  await expect(page.getByRole('button', { name: 'Larger text', exact: true })).toBeVisible();
}

test('the next customer finds neither the large text nor the language of one who is done', async ({ page }) => {
  await openState(page, 'handed');
  await setUp(page);
  await tap(page.locator('[data-act="done"]'));
  await isAsAtFirst(page);
});

test('nor of one who starts over', async ({ page }) => {
  await openState(page, 'ask-reason');
  await setUp(page);
  await tap(page.locator('.stub-foot .plain').last());
  await tap(page.locator('.stub-foot .plain').first());
  await isAsAtFirst(page);
});

test('nor a language that arrives after the one who chose it has gone', async ({ page }) => {
  await openState(page, 'ask-reason');
  let letGo = () => {};
  const held = new Promise<void>((resolve) => {
    letGo = resolve;
  });
  const german: Promise<void>[] = [];
  await page.route('**/assets/*.js', (route) => {
    const going = held.then(() => route.continue());
    german.push(going);
    return going;
  });
  await page.locator('.stub .speech').selectOption('de');
  await expect.poll(() => german.length).toBeGreaterThan(0);
  await tap(page.locator('.stub-foot .plain').last());
  await tap(page.locator('.stub-foot .plain').first());
  await page.locator('lw-welcome').waitFor();
  letGo();
  await Promise.all(german);
  await page.waitForLoadState('networkidle');
  await expect(page.locator('html')).toHaveAttribute('lang', 'en');
  await expect(page.getByRole('button', { name: words('en').screen.welcome.start, exact: true })).toBeVisible();
});

test('nobody is asked about health notes where the card would have none', async ({ page }) => {
  await openState(page, 'result-one-activity');
  await tap(page.locator('[data-act="card"]'));
  await expect(page.locator('iframe.twin, [data-act="healthNo"]')).toHaveCount(1);
  await expect(page.locator('iframe.twin')).toBeVisible();
});
