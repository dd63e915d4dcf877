import { expect, type Page, test } from '@playwright/test';
import {
  closeTicket,
  en,
  GLANCE,
  handOver,
  openBench,
  override,
  pairNames,
  showView,
  toResult,
} from './at-the-bench.ts';
import { report, watchMoves } from './bench-figures.ts';
import { storyNamed, tap } from './walk.ts';

// Movement has its own checks; without it no tap waits for a page to come to rest.
test.use({ reducedMotion: 'reduce' });

/** Three customers on a Saturday, and the change that the fitter makes for each. */
const CUSTOMERS = [
  {
    story: 'same-again',
    own: 'Running on trails',
    change: ['activity', ['Running', 'Running on roads'], 'mistapped'],
  },
  {
    story: 'just-the-size',
    own: 'Running on roads',
    change: ['activity', ['Running', 'Running on trails'], 'asked-again'],
  },
  { story: 'minimal-budget', own: 'Up to €60', change: ['budget', ['Up to €160'], 'seen'] },
] as const;

const tab = (page: Page, ticket: string) => page.locator(`.tab[data-tab="${ticket}"]`);

/** Brings an open ticket to the front; returns the pairs on it. */
async function turnTo(page: Page, ticket: string): Promise<readonly string[]> {
  await tap(tab(page, ticket));
  await expect(page.locator('lw-ticket h1')).toHaveText(ticket);
  return pairNames(page, GLANCE);
}

test('three customers wait, the longest first; all three are open at once, and nothing of one gets into another', async ({
  page,
}) => {
  test.setTimeout(180_000);
  await page.goto('');
  const waiting: { ticket: string; pairs: readonly string[] }[] = [];
  for (const { story } of CUSTOMERS) {
    const pairs = await toResult(page, storyNamed(story).answers);
    waiting.push({ ticket: await handOver(page), pairs });
  }
  const tickets = waiting.map(({ ticket }) => ticket);
  expect(new Set(tickets).size).toBe(3);
  await openBench(page);
  const rows = page.locator('.ticket-row');
  await expect(rows).toHaveCount(3);
  expect(await rows.evaluateAll((all) => all.map((row) => row.getAttribute('data-ticket')))).toEqual(tickets);
  for (const [at, activity] of ['Running on trails', 'Running on roads', 'Running on a treadmill'].entries()) {
    await expect(rows.nth(at)).toContainText(activity);
  }

  for (const { ticket, pairs } of waiting) {
    await tap(page.locator(`[data-ticket="${ticket}"]`));
    expect(await pairNames(page, GLANCE)).toEqual(pairs);
    await tap(tab(page, 'tickets'));
  }
  await expect(page.locator('.tab:not([data-tab="tickets"], [data-tab="shop"])')).toHaveText(tickets);
  for (const row of await rows.all()) await expect(row).toContainText('open');

  const moves = await watchMoves(page);
  const moved: (readonly string[])[] = [];
  for (const [at, { change }] of CUSTOMERS.entries()) {
    const [question, options, reason] = change;
    const { ticket, pairs } = waiting[at] ?? { ticket: '', pairs: [] };
    expect(await turnTo(page, ticket)).toEqual(pairs);
    await override(page, question, options, reason);
    await expect(page.locator('lw-ticket .moved li').first()).toBeVisible();
    moved.push(await pairNames(page, GLANCE));
    expect(moved[at]).not.toEqual(pairs);
  }

  for (const [at, { own, change }] of CUSTOMERS.entries()) {
    const [question, options, reason] = change;
    expect(await turnTo(page, tickets[at] ?? '')).toEqual(moved[at]);
    const changed = page.locator('lw-answers .changed');
    await expect(changed).toHaveCount(1);
    await expect(changed).toContainText(`Changed by LT: ${en.reason[reason]}. The customer said: ${own}`);
    await expect(page.locator(`li[data-question="${question}"] .said-so strong`)).toHaveText(options.at(-1) ?? '');
    await showView(page, 'decide');
    await expect(page.locator('lw-decide input:checked')).toHaveCount(0);
    await tap(page.locator('lw-decide fieldset').first().locator('label').nth(at));
    await expect(page.locator('lw-decide .final')).toBeVisible();
  }
  const chosen = page.locator('lw-decide fieldset').first().locator('input[name="chosen"]');
  for (const [at, ticket] of tickets.entries()) {
    await turnTo(page, ticket);
    await expect(page.locator('lw-decide')).toBeVisible();
    await expect(chosen.nth(at)).toBeChecked();
  }

  for (const [at, ticket] of tickets.entries()) {
    expect(await turnTo(page, ticket)).toEqual(moved[at]);
    await closeTicket(page);
    await expect(tab(page, ticket)).toHaveCount(0);
    expect(await rows.evaluateAll((all) => all.map((row) => row.getAttribute('data-ticket')))).toEqual(
      tickets.slice(at + 1),
    );
  }
  await expect(page.locator('lw-tickets')).toContainText(en.tickets.none);
  report('bench-three-tickets', { tapToLineUpMoved: await moves() });
});
