import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { axeFaults } from './axe-faults.ts';
import { openState, SCREEN_STATES, speakState } from './screens.ts';

/** States to a test: each is one worker's work for some seconds. */
const TOGETHER = 12;

const ids = SCREEN_STATES.map(({ id }) => id);
/** Every state is looked at in English, and every third again in one of these, in turn: most often from right to left. */
const OTHERS = ['ar', 'de', 'ar', 'fr', 'ar', 'es'];
function otherOf(state: string): string | undefined {
  const at = ids.indexOf(state);
  return at % 3 === 0 ? OTHERS[(at / 3) % OTHERS.length] : undefined;
}

/** The states' faults by name and language; a state without any is left out. Each is loaded once. */
async function faultsOf(page: Page, states: readonly string[]) {
  const found: Record<string, readonly string[]> = {};
  const look = async (name: string) => {
    const seen = await axeFaults(page);
    if (seen.length > 0) found[name] = seen;
  };
  for (const state of states) {
    await openState(page, state);
    await look(`${state} en`);
    const other = otherOf(state);
    if (other === undefined) continue;
    await speakState(page, other);
    await look(`${state} ${other}`);
  }
  return found;
}

const chunks = (all: readonly string[]): readonly (readonly string[])[] =>
  Array.from({ length: Math.ceil(all.length / TOGETHER) }, (_, at) => all.slice(at * TOGETHER, (at + 1) * TOGETHER));

test.use({ reducedMotion: 'reduce' });
// Generous: a test looks at a dozen pages.
test.describe.configure({ timeout: 180_000 });

for (const states of chunks(ids)) {
  test(`axe finds nothing on ${states.join(', ')}`, async ({ page }) => {
    expect(await faultsOf(page, states)).toEqual({});
  });
}

test('with more contrast axe finds nothing', async ({ page }) => {
  const states = [
    'welcome',
    'ask-reason',
    'signs-confirm',
    'body-marked',
    'result-pairs',
    'result-refer',
    'review',
    'bench-line-up',
    'shop-load',
  ];
  for (const state of states) {
    await openState(page, state);
    await page.locator('html').evaluate((root) => root.setAttribute('data-contrast', 'more'));
    expect(await axeFaults(page), state).toEqual([]);
  }
});

test('the card to read, as a page of its own, is clean too', async ({ page }) => {
  await openState(page, 'card');
  const card = await page
    .locator('iframe.twin')
    .contentFrame()
    .locator('html')
    .evaluate((root) => root.outerHTML);
  await page.route('**/twin.html', (route) =>
    route.fulfill({ contentType: 'text/html', body: `<!doctype html>${card}` }),
  );
  await page.goto('twin.html');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  expect(await axeFaults(page)).toEqual([]);
});

test('axe sees what was planted', async ({ page }) => {
  const planted = readFileSync(new URL('./fixtures/inaccessible.html', import.meta.url), 'utf8');
  await page.route('**/planted.html', (route) => route.fulfill({ contentType: 'text/html', body: planted }));
  await page.goto('planted.html');
  const rules = new Set((await axeFaults(page)).map((fault) => fault.split(':')[0]));
  expect([...rules].sort()).toEqual(['button-name', 'color-contrast', 'html-has-lang', 'image-alt', 'target-size']);
});
