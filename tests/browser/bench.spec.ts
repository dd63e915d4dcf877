import { readFileSync } from 'node:fs';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { storyNamed, tap, walkInterview } from './walk.ts';

const bench = (language: string) =>
  JSON.parse(readFileSync(new URL(`../../flows/words/${language}/bench.json`, import.meta.url), 'utf8')).bench;
const en = bench('en');
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

async function clean(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).withTags(TAGS).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`)).toEqual([]);
}

async function openBench(page: Page, first = true): Promise<void> {
  await page.locator('[data-act="staff"]').tap();
  await page.locator('input[name="pin"]').fill('24 68');
  if (first) await page.locator('input[name="again"]').fill('2468');
  await page.locator('input[name="initials"]').fill('LT');
  await page.getByRole('button', { name: first ? en.pin.set : en.pin.open, exact: true }).tap();
  await page.locator('lw-tickets').waitFor();
}

/** Changes an answer of one tap, and says why in one more. */
async function override(page: Page, question: string, option: string, reason: string): Promise<void> {
  await page.locator(`li[data-question="${question}"] [data-edit]`).tap();
  await page.locator('lw-edit-answer').getByRole('button', { name: option, exact: true }).tap();
  await page.locator(`lw-edit-answer [data-reason="${reason}"]`).tap();
  await page.locator('lw-edit-answer').waitFor({ state: 'detached' });
}

test('a visit goes from the customer’s last answer to the final card at the bench', async ({ page }) => {
  await page.goto('');
  await walkInterview(page, storyNamed('netball-old-sprain').answers, 'en', tap);
  await page.getByRole('button', { name: 'Show my pairs', exact: true }).tap();
  await page.locator('[data-act="hand"]').tap();
  await page.locator('[data-act="handYes"]').tap();
  await page.locator('[data-act="done"]').tap();
  await openBench(page);
  const row = page.locator('.ticket-row');
  await expect(row).toContainText('Netball');
  await expect(row).toContainText(en.hold.none);
  await clean(page);
  await row.tap();

  const ticket = page.locator('lw-ticket');
  await expect(ticket.locator('.glance li').first()).toBeVisible();
  const before = (await ticket.locator('.glance ol').textContent()) ?? '';
  await override(page, 'budget', 'Up to 160', 'asked-again');
  await expect(ticket.locator('.glance ol')).not.toHaveText(before);
  await expect(ticket.locator('.moved')).toContainText('came in');
  await expect(ticket.locator('.moved')).toContainText('because of “What is the most you want to pay?”');
  await override(page, 'closure', "I don't mind", 'mistapped');
  await expect(ticket.locator('.changed').first()).toContainText('LT');
  await expect(ticket.locator('li[data-question="budget"]')).toContainText('Up to 120');
  await clean(page);

  await page.keyboard.press('l');
  const first = ticket.locator('.line-up .pair').first();
  const name = ((await first.locator('h3 span').last().textContent()) ?? '').trim();
  await first.getByRole('button', { name: en.lines.setAside }).tap();
  await first.locator('[data-reason="had-it-before"]').tap();
  await expect(ticket.locator('.moved')).toContainText(en.reason['had-it-before']);
  await expect(ticket.locator('.glance ol')).not.toContainText(name);
  await page.keyboard.press('u');
  await expect(ticket.locator('.glance ol')).toContainText(name);
  for (const box of (await ticket.locator('.pair-acts input').all()).slice(0, 2)) await box.check();
  await expect(ticket.locator('lw-compare .strip').first()).toBeVisible();
  await clean(page);

  await page.keyboard.press('d');
  await ticket.locator('lw-decide input[name="chosen"]').first().check();
  await expect(ticket.locator('.final')).toBeVisible();
  await clean(page);
  for (const copy of ['customer', 'fitter']) {
    const download = page.waitForEvent('download');
    await ticket.locator(`[data-card="${copy}-save"]`).tap();
    const saved = await download;
    expect(
      readFileSync((await saved.path()) ?? '')
        .subarray(0, 5)
        .toString(),
    ).toBe('%PDF-');
  }
  await ticket.locator('[data-act="close"]').tap();
  await ticket.locator('[data-act="close-yes"]').tap();
  await expect(page.locator('lw-tickets')).toContainText(en.note.closed);
  await expect(page.locator('.ticket-row')).toHaveCount(0);
});

test('wrong PINs slow down, and a reload does not shorten the wait', async ({ page }) => {
  await page.goto('');
  await openBench(page);
  await page.locator('[data-act="lock"]').tap();
  await page.locator('[data-act="staff"]').tap();
  const open = page.getByRole('button', { name: en.pin.open, exact: true });
  const attempt = async () => {
    await page.locator('input[name="pin"]').fill('1357');
    await page.locator('input[name="initials"]').fill('LT');
    await open.tap();
  };
  for (let n = 0; n < 2; n += 1) {
    await attempt();
    await expect(page.locator('#pin-error')).toHaveText(en.pin.wrong);
  }
  await attempt();
  await expect(page.locator('#pin-error')).toContainText('Wait');
  await expect(open).toBeDisabled();
  await clean(page);
  await page.reload();
  await page.locator('[data-act="staff"]').tap();
  await page.locator('input[name="pin"]').fill('2468');
  await page.locator('input[name="initials"]').fill('LT');
  await open.tap();
  await expect(page.locator('#pin-error')).toContainText('Wait');
});

test('codes that will not do say what happened, and a link opens its visit behind the PIN', async ({ page }) => {
  await page.goto('');
  await openBench(page);
  const field = page.locator('input[name="code"]');
  const give = async (text: string) => {
    await field.fill(text);
    await page.locator('lw-code-reader').getByRole('button', { name: en.code.open, exact: true }).tap();
  };
  await give('https://example.org/menu');
  await expect(page.locator('#code-error')).toContainText('not from one of our cards');
  await page.getByRole('button', { name: en.tickets.blank, exact: true }).tap();
  await expect(page.locator('lw-answers .answer').first()).toBeVisible();
  await page.locator('.ask-now').first().waitFor();
  await clean(page);
  await page.getByRole('button', { name: en.allTickets, exact: true }).tap();
  await expect(page.locator('.ticket-row')).toHaveCount(1);
  await page.getByRole('button', { name: 'Deutsch', exact: true }).tap();
  await expect(page.locator('h1')).toHaveText(bench('de').tickets.title);
  await clean(page);
});
