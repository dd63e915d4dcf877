import { expect, type Page, test } from '@playwright/test';
import { openState } from './screens.ts';
import { storedDraft } from './stored.ts';
import { openCard, storyNamed, tap, walkInterview } from './walk.ts';

// Movement has its own checks; without it no tap waits for a page to come to rest.
test.use({ reducedMotion: 'reduce' });

const { answers } = storyNamed('same-again');
const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

test('a shoe whose name is HTML is shown as that text, and runs nothing', async ({ page }) => {
  // In quotes, as a comma stands in it.
  const evil = '<img src=x onerror="document.title=1, 2"><b>Bold</b>';
  await page.route('**/shop/stock.csv', async (route) => {
    const response = await route.fetch();
    const [head = '', ...lines] = (await response.text()).split('\n');
    const at = head.split(',').indexOf('model');
    const named = lines.map((line) => {
      const cells = line.split(',');
      if (cells[at]) cells[at] = `"${evil.replaceAll('"', '""')}"`;
      return cells.join(',');
    });
    await route.fulfill({ response, body: [head, ...named].join('\n') });
  });
  await page.goto('');
  await walkInterview(page, answers);
  await tap(page.locator('lw-review ~ .foot .main'));
  await expect(page.locator('lw-result .pair h3').first()).toContainText(evil);
  await openCard(page);
  const twin = page.locator('iframe.twin').contentFrame();
  await expect(twin.getByText(evil).first()).toBeVisible();
  await expect(page.locator('img[src="x"]')).toHaveCount(0);
  await expect(twin.locator('img[src="x"]')).toHaveCount(0);
  await expect(twin.locator('b', { hasText: /^Bold$/ })).toHaveCount(0);
  await expect(page).toHaveTitle(/Lacewing/);
});

const EU = '16 to 52';
const REFUSED = [
  ['', 'Type a number first, or tap Not sure.'],
  ['abc', '“abc” is not a number. Type it like 42 or 42.5.'],
  ['<b>42</b>', '“<b>42</b>” is not a number. Type it like 42 or 42.5.'],
  ['4 2 1 7', '“4 2 1 7” is not a number. Type it like 42 or 42.5.'],
  ['999', `999 does not look right. We expect ${EU}.`],
  ['265', 'You typed 265. Did you mean another kind of size?'],
] as const;

test('a size that cannot be is answered kindly and exactly, and what was typed stays', async ({ page }) => {
  await openState(page, 'ask-now-size');
  const field = page.locator('input[type="text"]');
  for (const [typed, said] of REFUSED) {
    await field.fill(typed);
    await tap(button(page, 'Continue'));
    const alert = page.getByRole('alert');
    await expect(alert).toHaveText(said);
    await expect(alert).toBeFocused();
    await expect(field).toHaveValue(typed);
    await expect(field).toHaveAttribute('aria-invalid', 'true');
  }
});

const UNDERSTOOD = [
  ['42,5', 42.5],
  ['43.5', 43.5],
  [' 44½ ', 44.5],
  ['42 2/3', 42.667],
  ['EU 43', 43],
  ['٤٢', 42],
] as const;

test('a size with a comma, a fraction, its unit or the digits of another script is understood', async ({ page }) => {
  await page.goto('');
  await walkInterview(page, answers, 'en', tap, { until: 'now-size' });
  for (const [typed, value] of UNDERSTOOD) {
    await page.locator('input[type="text"]').fill(typed);
    await tap(button(page, 'Continue'));
    await expect(page.locator('lw-question')).toHaveAttribute('data-question', 'now-feel');
    expect((await storedDraft(page))?.interview.answers['now-size'], typed).toEqual({ value, unit: 'eu' });
    await tap(button(page, 'Back'));
    await expect(page.locator('lw-question')).toHaveAttribute('data-question', 'now-size');
  }
});

test('a size that is rare at the age told is asked about once more, and one tap keeps it or takes what was meant', async ({
  page,
}) => {
  for (const [name, kept] of [
    ['Yes: EU 20.5', { value: 20.5, unit: 'eu' }],
    ['No: 20.5 cm', { value: 20.5, unit: 'cm' }],
  ] as const) {
    await openState(page, 'size-rare-at-age');
    await expect(page.getByRole('alert')).toHaveText('“EU 20.5” is rare at this age. Is it right?');
    await tap(button(page, name));
    await expect(page.locator('lw-question')).toHaveAttribute('data-question', 'now-feel');
    await tap(button(page, 'Back'));
    await expect(page.locator('input[type="text"]')).toHaveValue('20.5');
    await expect(page.locator(`input[value="${kept.unit}"]`)).toBeChecked();
  }
});

/** From here on time passes only when the test lets it. */
const stopClock = (page: Page): Promise<void> => page.clock.pauseAt(Date.now() + 2000);

test('somebody who was only thinking finds everything as it was', async ({ page }) => {
  await page.clock.install();
  await page.goto('');
  await walkInterview(page, answers, 'en', tap, { until: 'now-size' });
  await page.locator('input[type="text"]').fill('41');
  const given = await storedDraft(page);
  await stopClock(page);
  await page.clock.runFor(91_000);
  const dialog = page.getByRole('dialog', { name: 'Are you still there?' });
  await expect(dialog).toBeVisible();
  await expect(dialog).toContainText(/in (2[5-9]|30) seconds/);
  await page.clock.runFor(21_000);
  await expect(dialog, 'at least 20 seconds to answer').toContainText(/in [4-9] seconds/);
  await tap(button(page, "I'm still here"));
  await expect(dialog).toHaveCount(0);
  await expect(page.locator('input[type="text"]')).toHaveValue('41');
  await expect(page.locator('input[type="text"]')).toBeFocused();
  await expect(page.locator('lw-question')).toHaveAttribute('data-question', 'now-size');
  expect(await storedDraft(page)).toEqual(given);
  // And the next quiet minute and a half is counted from here.
  await page.clock.runFor(80_000);
  await expect(dialog).toHaveCount(0);
});

test('somebody who walked away leaves nothing: the welcome says so, and the draft is gone', async ({ page }) => {
  await page.clock.install();
  await page.goto('');
  await walkInterview(page, answers, 'en', tap, { until: 'now-size' });
  await stopClock(page);
  await page.clock.runFor(91_000);
  await page.getByRole('dialog').waitFor();
  await page.clock.runFor(31_000);
  await expect(button(page, 'Start')).toBeVisible();
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(page.getByRole('status')).toHaveText('The last answers were wiped, as nobody was here.');
  expect(await storedDraft(page)).toBeUndefined();
  await page.reload();
  await expect(button(page, 'Carry on')).toHaveCount(0);
});

test('answers found again after a restart are wiped too when nobody claims them', async ({ page }) => {
  await page.clock.install();
  await page.goto('');
  await walkInterview(page, answers, 'en', tap, { until: 'now-size' });
  await page.reload();
  await button(page, 'Carry on').waitFor();
  await stopClock(page);
  await page.clock.runFor(91_000);
  await page.getByRole('dialog').waitFor();
  await page.clock.runFor(31_000);
  await expect(button(page, 'Start')).toBeVisible();
  expect(await storedDraft(page)).toBeUndefined();
});

test('answers of another day are not offered to anybody', async ({ page }) => {
  await page.clock.install();
  await page.goto('');
  await walkInterview(page, answers, 'en', tap, { until: 'now-size' });
  await page.clock.setFixedTime(Date.now() + 24 * 60 * 60 * 1000);
  await page.reload();
  await expect(button(page, 'Start')).toBeVisible();
  await expect(button(page, 'Carry on')).toHaveCount(0);
  expect(await storedDraft(page)).toBeUndefined();
});
