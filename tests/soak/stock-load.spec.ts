import { writeFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { tap } from '../browser/walk.ts';
import { bigStock } from './big-stock.ts';

/** Milliseconds; longer than this on the screens' thread and a touch is felt to be late (W3C, Long Tasks). */
const LONG = 50;

/** Counts long tasks from the first moment of the page on. */
const watch = (page: Page) =>
  page.addInitScript(() => {
    const tasks: { start: number; length: number }[] = [];
    Object.assign(window, { longTasks: tasks });
    new PerformanceObserver((list) => {
      for (const { startTime, duration } of list.getEntries()) tasks.push({ start: startTime, length: duration });
    }).observe({ type: 'longtask', buffered: true });
  });

const longest = (page: Page, since: number): Promise<number> =>
  page.evaluate(
    (from) =>
      Math.max(
        0,
        ...(window as unknown as { longTasks: { start: number; length: number }[] }).longTasks
          .filter(({ start }) => start >= from)
          .map(({ length }) => length),
      ),
    since,
  );

const now = (page: Page): Promise<number> => page.evaluate(() => performance.now());

async function openShop(page: Page, first: boolean): Promise<void> {
  await tap(page.locator('[data-act="staff"]'));
  await page.locator('input[name="pin"]').fill('2468');
  if (first) await page.locator('input[name="again"]').fill('2468');
  await page.locator('input[name="initials"]').fill('KB');
  await tap(page.locator('lw-pin button[type="submit"]'));
  await page.locator('lw-tickets h1').waitFor();
  await tap(page.locator('.tabs .tab').last());
  await page.locator('lw-stock-boxes p[role="status"]').waitFor();
}

test('sixty thousand boxes load without the screen ever standing still', async ({ page }, info) => {
  const path = info.outputPath('big.csv');
  writeFileSync(path, bigStock());
  await watch(page);
  await page.goto('');
  await openShop(page, true);
  await page.waitForTimeout(1000);

  let from = await now(page);
  await page.locator('lw-stock-load input[type="file"]').setInputFiles(path);
  await page.locator('.offer [data-act="swap"]').waitFor({ timeout: 120_000 });
  const reading = { ms: Math.round((await now(page)) - from), longest: await longest(page, from) };
  await expect(page.locator('[data-figure="boxes"] dd')).toHaveText('60,000');

  from = await now(page);
  await tap(page.locator('[data-act="swap"]'));
  await expect(page.locator('.as-of')).toContainText('60,000 boxes', { timeout: 60_000 });
  const swapping = { ms: Math.round((await now(page)) - from), longest: await longest(page, from) };

  from = await now(page);
  await page.locator('lw-stock-boxes input[name="name"]').fill('Made-up 4321');
  await expect(page.locator('.box-rows li')).toHaveCount(12);
  const finding = { ms: Math.round((await now(page)) - from), longest: await longest(page, from) };

  await page.reload();
  await openShop(page, false);
  await expect(page.locator('.as-of')).toContainText('60,000 boxes');
  await page.waitForTimeout(500);
  const opening = { ms: Math.round(await now(page)), longest: await longest(page, 0) };

  const figures = { reading, swapping, finding, opening };
  process.stdout.write(`${JSON.stringify(figures)}\n`);
  info.annotations.push({ type: 'figures', description: JSON.stringify(figures) });
  for (const { longest: task } of [reading, swapping]) expect(task).toBeLessThanOrEqual(LONG);
});
