import { expect, type Page, test } from '@playwright/test';
import { byKeyboard, goesOn, type Stop, stopNow, tabTo, typeByKeyboard } from './by-keyboard.ts';
import { plain, savedCard } from './pdf-text.ts';
import { type Act, openCard, storyNamed, walkInterview } from './walk.ts';

// Movement has its own checks; without it no tap waits for a page to come to rest.
test.use({ reducedMotion: 'reduce' });

/** Counts what a hand on the screen or a mouse would do. */
async function watchHands(page: Page): Promise<() => Promise<number>> {
  await page.addInitScript(() => {
    let hands = 0;
    addEventListener('pointerdown', () => {
      hands += 1;
      document.documentElement.dataset['hands'] = String(hands);
    });
  });
  return async () => Number((await page.locator('html').getAttribute('data-hands')) ?? 0);
}

test('a nurse with a keyboard alone gets from the welcome to her card', async ({ page }) => {
  test.setTimeout(120_000);
  const hands = await watchHands(page);
  await page.goto('');
  await walkInterview(page, storyNamed('nurse-on-tiles').answers, 'en', byKeyboard, {
    type: typeByKeyboard,
    at: () => expect(page.locator('#ask'), 'the question takes the focus').toBeFocused(),
  });
  await expect(page.locator('#ask')).toBeFocused();
  await byKeyboard(page.locator('lw-review ~ .foot .main'));
  await expect(page.locator('lw-result #ask')).toBeFocused();
  await openCard(page, byKeyboard);
  await expect(page.locator('#ask')).toBeFocused();
  const card = await savedCard(page, () => byKeyboard(page.locator('[data-act="save"]')));
  expect(card.text).toContain(plain('The Invented Shoe Yard'));
  expect(await hands()).toBe(0);
});

test('somebody with one switch, stepping from stop to stop, comes through in the order the eye reads', async ({
  page,
}) => {
  const hands = await watchHands(page);
  let before: Stop | undefined;
  const faults: string[] = [];
  const look = (stop: Stop | undefined): void => {
    if (stop && !stop.ring) faults.push(`no ring on ${stop.name}`);
    if (stop && !stop.clear) faults.push(`${stop.name} is hidden`);
    if (stop?.inMain && before?.inMain && !goesOn(before, stop)) faults.push(`${before.name} → ${stop.name}`);
    before = stop;
  };
  const scan: Act = async (on) => {
    before = await stopNow(page);
    await tabTo(on, look);
    await page.keyboard.press((await on.locator('input').count()) > 0 ? 'Space' : 'Enter');
  };
  await page.goto('');
  const answers = { ...storyNamed('same-again').answers, 'now-size': 'not-sure' };
  await walkInterview(page, answers, 'en', scan, {
    at: () => expect(page.locator('#ask'), 'the question takes the focus').toBeFocused(),
  });
  await scan(page.locator('lw-review ~ .foot .main'));
  await expect(page.locator('lw-result #ask')).toBeFocused();
  await openCard(page, scan);
  expect(faults).toEqual([]);
  expect(await hands()).toBe(0);
});
