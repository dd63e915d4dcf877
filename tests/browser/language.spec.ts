import { expect, type Page, test } from '@playwright/test';
import { storedDraft } from './stored.ts';
import { flow, openCard, storyNamed, tap, walkInterview, words } from './walk.ts';

// Movement has its own checks; without it no tap waits for a page to come to rest.
test.use({ reducedMotion: 'reduce' });

const { answers } = storyNamed('netball-old-sprain');
const html = (page: Page) => page.locator('html');
const heading = (page: Page) => page.getByRole('heading', { level: 1 });
const toGerman = (page: Page) => page.locator('.stub .speech').selectOption('de');
const toEnglish = (page: Page) => page.locator('.stub .speech').selectOption('en');
const asks = (language: string, id: string): string => words(language).flow.question[id].ask;

test('German chosen in mid-interview keeps the place, the answers and ticks not yet given', async ({ page }) => {
  await page.goto('');
  await walkInterview(page, answers, 'en', tap, { until: 'floors' });
  await tap(page.locator('label:has(input[name="hall-vinyl"])'));
  await tap(page.locator('label:has(input[name="tiles"])'));
  const given = await storedDraft(page);
  const ticked = () =>
    page.locator('lw-shares input:checked').evaluateAll((all) => all.map((input) => input.getAttribute('name')));
  const before = await ticked();
  for (const [change, language] of [
    [toGerman, 'de'],
    [toEnglish, 'en'],
    [toGerman, 'de'],
  ] as const) {
    await change(page);
    await expect(heading(page)).toHaveText(asks(language, 'floors'));
    await expect(html(page)).toHaveAttribute('lang', language);
    await expect(page.locator('lw-question')).toHaveAttribute('data-question', 'floors');
    expect(await ticked()).toEqual(before);
    expect((await storedDraft(page))?.interview).toEqual(given?.interview);
  }
  await tap(page.locator('label:has(input[name="tiles"])'));
  const { screens } = await walkInterview(page, { ...answers, floors: {} }, 'de', tap, { begun: true });
  expect(screens.at(-1)).toBe(flow.sections.at(-1)?.questions.at(-1)?.id);

  // On review, and on each page after it, the same in the other language.
  await expect(heading(page)).toHaveText(words('de').screen.review.title);
  await toEnglish(page);
  await expect(heading(page)).toHaveText(words('en').screen.review.title);
  await expect(page.locator('lw-review dt').first()).toHaveText(asks('en', 'reason'));
  await tap(page.locator('lw-review ~ .foot .main'));
  await page.locator('lw-result').waitFor();
  const names = () => page.locator('lw-result .pair h3').allTextContents();
  const [title, pairs] = [await heading(page).textContent(), await names()];
  await toGerman(page);
  await expect(html(page)).toHaveAttribute('lang', 'de');
  await expect(heading(page)).not.toHaveText(title ?? '');
  expect(await names()).toEqual(pairs);
  await openCard(page);
  const twin = page.locator('iframe.twin').contentFrame().locator('html');
  await expect(twin).toHaveAttribute('lang', 'de');
  await toEnglish(page);
  await expect(twin).toHaveAttribute('lang', 'en');
});

test('a language chosen while the result still loads has all its words', async ({ page }) => {
  let held: (() => void) | undefined;
  const holding = new Promise<void>((resolve) => {
    held = resolve;
  });
  await page.route('**/shop/stock.csv', async (route) => {
    await holding;
    await route.continue();
  });
  await page.goto('');
  await walkInterview(page, storyNamed('same-again').answers, 'en', tap, { until: 'shelf' });
  await toGerman(page);
  await expect(heading(page)).toHaveText(asks('de', 'shelf'));
  held?.();
  await walkInterview(page, storyNamed('same-again').answers, 'de', tap, { begun: true });
  await tap(page.locator('lw-review ~ .foot .main'));
  await expect(page.locator('lw-result h1')).toBeVisible();
  await expect(page.locator('[data-act="change"]')).toBeVisible();
});
