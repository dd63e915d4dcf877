import { expect, test } from '@playwright/test';
import { en, givePin, LINE_UP, pairNames, showView, tryOnWords } from './at-the-bench.ts';
import { openState } from './screens.ts';
import { tap, words } from './walk.ts';

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
  await page.goto('?language=ar');
  await tap(page.locator('[data-act="staff"]'));
  await expect(page.locator('lw-pin h1')).toHaveText(en.pin.setTitle);
  await givePin(page);
  await expect(page.locator('lw-tickets h1')).toHaveText(en.tickets.title);
  await tap(page.locator('[data-act="lock"]'));
  await page.locator('lw-welcome').waitFor();
  await expect(page.locator('html')).toHaveAttribute('lang', 'ar');
  await expect(page.locator('html')).toHaveAttribute('dir', 'rtl');
  await expect(page.locator('[data-act="staff"]')).toHaveText(words('ar').screen.welcome.shop);
});

test('where nothing may be sold nobody is told to choose a pair, and a stop tapped by mistake says who can take it back', async ({
  page,
}) => {
  test.setTimeout(90_000);
  await openState(page, 'bench-refer');
  await tap(page.locator('li[data-question="signs"] [data-edit]'));
  await tap(page.locator('lw-signs [data-sign="numb-feet"]'));
  await tap(page.locator('lw-edit-answer').getByRole('button', { name: 'None of these', exact: true }));
  await tap(page.locator('lw-edit-answer [data-reason="mistapped"]'));
  await expect(page.locator('[data-question="signs"] .stop-stays')).toHaveText(en.clearance.never);
  await showView(page, 'decide');
  await expect(page.locator('lw-decide')).toContainText(en.decide.whyFirst);
  await expect(page.locator('lw-decide')).not.toContainText('Choose a pair');
  await expect(page.locator('lw-decide input[name="chosen"]')).toHaveCount(3);
});

test('a blank visit names no pair before somebody says what for, asks that first, and says to measure', async ({
  page,
}) => {
  test.setTimeout(90_000);
  await openState(page, 'bench-blank');
  await expect(page.locator('.ask-now').nth(0)).toContainText('Which shelf');
  await expect(page.locator('.ask-now').nth(1)).toContainText('What will you do most');
  await expect(page.locator('.ticket-head')).toContainText(en.lines.askFirst);
  await expect(page.locator('.glance ol li')).toHaveCount(0);
  await tap(page.locator('.ask-now').nth(1));
  for (const name of ['Running', 'Running on roads']) {
    await tap(page.locator('lw-edit-answer').getByRole('button', { name, exact: true }));
  }
  await expect(page.locator('.glance ol li').first()).toBeVisible();
  await expect(page.locator('.summed')).toContainText('Running on roads');
  await showView(page, 'feet');
  await expect(page.locator('.measure-first')).toContainText(en.lines.measureFirst);
  await tap(page.locator('[data-act="measure"]'));
  await expect(page.locator('lw-measure-feet')).toBeVisible();
});

test('the next best is named with its box, leaves its list once pulled in, and comes into view with its price', async ({
  page,
}) => {
  test.setTimeout(90_000);
  await openState(page, 'bench-line-up');
  const next = page.locator('.line-up .more li');
  await tap(page.locator('.line-up details:has(.more) > summary'));
  await expect(next.first()).toContainText('shelf');
  const name = ((await next.first().locator('span').first().textContent()) ?? '').trim();
  await tap(next.first().getByRole('button'));
  const pulled = page.locator('.pair').filter({ hasText: name });
  await expect(pulled).toBeInViewport();
  await expect(pulled.locator('.price')).toContainText('€');
  await expect(next.filter({ hasText: name })).toHaveCount(0);
});

test('a model looked for by its name is found with its box and shelf, or with the word that none is in the size', async ({
  page,
}) => {
  await openState(page, 'bench-pull-in');
  const said = await page.locator('.pull-in .more li span:nth-of-type(2)').allTextContents();
  expect(said.length).toBeGreaterThan(3);
  expect(said.filter((text) => !text.includes('shelf') && text.trim() !== en.lines.noBoxInSize)).toEqual([]);
  expect(said.some((text) => text.includes('shelf'))).toBe(true);
  // One that is in the line-up already says so, and offers nothing to tap.
  const [first = ''] = await pairNames(page, LINE_UP);
  await page.locator('.pull-in input').fill(first);
  const shown = page.locator('.pull-in .more li').filter({ hasText: first });
  await expect(shown).toContainText(en.lines.shownAlready);
  await expect(shown.getByRole('button')).toHaveCount(0);
});

test('a try that is held back says why, and a note on a pair is kept as it was typed', async ({ page }) => {
  test.setTimeout(90_000);
  await openState(page, 'bench-try-on');
  await expect(page.locator('[data-held]')).toContainText('Why: ');
  await page.locator('input[name="try-on-note"]').fill('<b>heel</b> & laces');
  await page.locator('input[name="try-on-note"]').press('Enter');
  await showView(page, 'profile');
  await showView(page, 'feet');
  await expect(page.locator('input[name="try-on-note"]')).toHaveValue('<b>heel</b> & laces');
});

test('answers that say nothing to go by are folded away below the rest', async ({ page }) => {
  test.setTimeout(90_000);
  await openState(page, 'bench-profile');
  await expect(page.locator('.summed')).toContainText('Netball');
  const folded = page.locator('lw-answers > details');
  await expect(folded.locator('.answer').first()).toBeHidden();
  await tap(folded.locator('> summary'));
  await expect(folded.locator('.answer').first()).toBeVisible();
});

test('what matters a little is named in one line, and told in full at a tap', async ({ page }) => {
  await openState(page, 'bench-profile');
  await expect(page.locator('lw-needs [data-need="midfoot-hold"]')).toBeVisible();
  const little = page.locator('lw-needs details.little');
  const twist = little.locator('[data-need="twist"]');
  await expect(little.locator('> summary')).toContainText('Twist');
  await expect(twist).toBeHidden();
  await tap(little.locator('> summary'));
  await expect(twist).toBeVisible();
});
