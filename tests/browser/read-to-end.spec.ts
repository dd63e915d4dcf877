import { expect, type Page, test } from '@playwright/test';
import { LANGUAGES, openState, speakState } from './screens.ts';

/** The signs, then the other lists of health answers that end in "none of these". */
const LISTS = ['ask-signs', 'signs-child', 'ask-inside', 'ask-conditions', 'ask-ankles'];
const SIZES = [
  { width: 1280, height: 800 },
  { width: 800, height: 1280 },
];

test.use({ reducedMotion: 'reduce' });

/** Goes down the page half a screen at a time; tells where an answer for the whole list could be tapped before all of it was seen. */
const answeredUnseen = (page: Page): Promise<readonly string[]> =>
  page.evaluate(async () => {
    const lines = [...document.querySelectorAll('lw-question li')];
    const answers = [...document.querySelectorAll('lw-question .foot .button')].slice(1);
    const seen = new Set<Element>();
    const found: string[] = [];
    if (lines.length === 0 || answers.length === 0) return ['there is no list to look at, or no answer to it'];
    const shows = (element: Element): boolean => {
      const { left, top, bottom, width } = element.getBoundingClientRect();
      return [top + 2, bottom - 2].every((y) => {
        const over = document.elementFromPoint(left + width / 2, y);
        return over !== null && (element.contains(over) || over.contains(element));
      });
    };
    const peeps = (element: Element): boolean => {
      const { top, bottom } = element.getBoundingClientRect();
      return bottom > 0 && top < innerHeight;
    };
    const end = document.documentElement.scrollHeight;
    for (let top = 0; top < end; top += innerHeight / 2) {
      scrollTo(0, top);
      await new Promise((drawn) => requestAnimationFrame(drawn));
      for (const line of lines) if (shows(line)) seen.add(line);
      const unseen = lines.filter((line) => !seen.has(line));
      if (unseen.length > 0 && answers.some(peeps)) {
        found.push(`“${answers.find(peeps)?.textContent?.trim()}” before “${unseen.at(-1)?.textContent?.trim()}”`);
      }
    }
    if (seen.size < lines.length) found.push(`${lines.length - seen.size} lines never show whole`);
    scrollTo(0, 0);
    return found;
  });

const setText = (page: Page, text: 'large' | 'normal'): Promise<void> =>
  page.evaluate((wanted) => document.documentElement.setAttribute('data-text', wanted), text);

for (const list of LISTS) {
  test(`nobody can say “none of these” of ${list} before every line of it was on the screen`, async ({ page }) => {
    const found: string[] = [];
    await openState(page, list);
    for (const language of LANGUAGES) {
      if (language !== 'en') await speakState(page, language);
      for (const size of SIZES) {
        await page.setViewportSize(size);
        for (const text of ['normal', 'large'] as const) {
          await setText(page, text);
          for (const fault of await answeredUnseen(page)) {
            found.push(`${language} ${size.width}×${size.height} ${text}: ${fault}`);
          }
        }
      }
    }
    expect(found).toEqual([]);
  });
}

test('lying down, in English, all signs and the answers to them are on the screen at once', async ({ page }) => {
  for (const list of ['ask-signs', 'signs-child']) {
    await openState(page, list);
    const over = await page.evaluate(() => document.documentElement.scrollHeight - innerHeight);
    expect(over, `${list}: pixels to scroll`).toBe(0);
  }
});

/** How far a page asking whether a sign is right goes past the screen, and whether the sign asked about stands whole on it. */
const askedAgain = async (page: Page): Promise<readonly string[]> => {
  const found: string[] = [];
  const signs = await page
    .locator('[data-sign]')
    .evaluateAll((all) => all.map((sign) => sign.getAttribute('data-sign')));
  for (const sign of signs) {
    await page.locator(`[data-sign="${sign}"]`).click();
    const over = await page.evaluate(() => document.documentElement.scrollHeight - innerHeight);
    if (over > 0) found.push(`${sign}: ${over} pixels to scroll`);
    await page.locator('.confirm .button:not(.main)').click();
  }
  if (signs.length < 11) found.push('there are no signs to tap');
  return found;
};

for (const language of ['en', 'fr', 'ar']) {
  test(`lying down, in ${language}, who is asked again about a sign still sees all answers`, async ({ page }) => {
    await openState(page, 'ask-signs');
    if (language !== 'en') await speakState(page, language);
    expect(await askedAgain(page)).toEqual([]);
  });
}

test('a planted question about a sign as high as three of them is found', async ({ page }) => {
  await openState(page, 'ask-signs');
  await page.evaluate(() => document.styleSheets[0]?.insertRule('.confirm.confirm { min-height: 14rem; }'));
  expect((await askedAgain(page)).length).toBeGreaterThan(10);
});

test('a planted “none of these” that stays in sight over a long list is found', async ({ page }) => {
  await openState(page, 'ask-signs');
  await setText(page, 'large');
  expect(await answeredUnseen(page)).toEqual([]);
  await page.locator('lw-question .foot').evaluate((foot) => foot.classList.add('sticky'));
  expect((await answeredUnseen(page)).join()).toContain('before “');
});
