import { expect, type Page, test } from '@playwright/test';
import { openState, SCREEN_STATES } from './screens.ts';

/** Every question, and one of each other kind of page. */
const PAGES = SCREEN_STATES.map(({ id }) => id).filter((id) =>
  /^ask-|^(welcome-draft|activity-group|signs-confirm|body-marked|review|handed|result-pairs)$/.test(id),
);
const SIZES = [
  { width: 800, height: 1280 },
  { width: 1280, height: 800 },
];
/** German has the longest words of the five. */
const LANGUAGE = 'de';

test.use({ reducedMotion: 'reduce' });

/** Words that go on in the next line though no hyphen is drawn: hyphens of the browser's own are turned off to see them. */
const broken = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    document.documentElement.dataset['text'] = 'large';
    document.styleSheets[0]?.insertRule('* { hyphens: manual !important; }', document.styleSheets[0].cssRules.length);
    const found: string[] = [];
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let text = texts.nextNode(); text; text = texts.nextNode()) {
      if (text.parentElement?.closest('.visually-hidden, svg, select, script, style')) continue;
      for (const word of text.textContent?.matchAll(/[^\s\-–—/…]+/gu) ?? []) {
        const range = document.createRange();
        range.setStart(text, word.index);
        range.setEnd(text, word.index + word[0].length);
        const lines = new Set([...range.getClientRects()].filter(({ width }) => width > 0).map(({ top }) => top));
        if (lines.size > 1) found.push(word[0]);
      }
    }
    return found;
  });

for (const half of [0, 1]) {
  const states = PAGES.filter((_, at) => at % 2 === half);
  test(`with larger text, upright and lying, no word is broken inside: ${states.join(', ')}`, async ({ page }) => {
    const found: string[] = [];
    for (const state of states) {
      await openState(page, state, LANGUAGE);
      for (const size of SIZES) {
        await page.setViewportSize(size);
        found.push(...(await broken(page)).map((word) => `${state} ${size.width}: ${word}`));
      }
    }
    expect(found).toEqual([]);
  });
}

test('a planted word broken for want of room is found', async ({ page }) => {
  await openState(page, 'ask-liking', LANGUAGE);
  await page
    .locator('.segments label')
    .first()
    .evaluate((label) => {
      label.style.setProperty('max-width', '3rem');
      label.style.setProperty('overflow-wrap', 'anywhere');
    });
  expect((await broken(page)).length).toBeGreaterThan(0);
});
