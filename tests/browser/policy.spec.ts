import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { savedCard } from './pdf-text.ts';
import { openState } from './screens.ts';
import { openCard, storyNamed, tap, walkInterview } from './walk.ts';

// Movement has its own checks; without it no tap waits for a page to come to rest.
test.use({ reducedMotion: 'reduce' });

const fixture = (name: string): string => readFileSync(new URL(`./fixtures/${name}`, import.meta.url), 'utf8');
const policyOf = (page: Page): Promise<string | null> =>
  page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content');

interface Watched {
  /** Addresses asked for outside the kiosk's own origin. */
  readonly strangers: string[];
  /** What the browser's policy stopped, and scripts that broke. */
  readonly broken: string[];
}

/** Watches a page, its frames and its workers from before they load. Nothing that is asked of strangers goes out. */
async function watch(page: Page, origin: string): Promise<Watched> {
  const watched: Watched = { strangers: [], broken: [] };
  page.context().on('request', (request) => {
    const url = new URL(request.url());
    if (url.origin !== origin && url.protocol !== 'blob:' && url.protocol !== 'data:') watched.strangers.push(url.href);
  });
  await page.context().route(/^https?:\/\/elsewhere\.invalid/, (route) => route.abort());
  page.on('pageerror', (error) => watched.broken.push(error.message));
  page.on('console', (message) => {
    if (/content security policy/i.test(message.text())) watched.broken.push(message.text());
  });
  await page.exposeFunction('policyStopped', (what: string) => watched.broken.push(what));
  await page.addInitScript(() => {
    addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) => {
      (globalThis as unknown as { policyStopped: (what: string) => void }).policyStopped(
        `${violatedDirective} stopped ${blockedURI}`,
      );
    });
  });
  return watched;
}

test('the built page carries the strict policy', async ({ page }) => {
  for (const address of ['', 'states/index.html']) {
    await page.goto(address);
    const policy = (await policyOf(page)) ?? '';
    const rules = policy.split('; ');
    for (const rule of [
      "default-src 'none'",
      "script-src 'self'",
      "style-src 'self'",
      "connect-src 'self'",
      "form-action 'none'",
    ]) {
      expect(rules).toContain(rule);
    }
    expect(policy).not.toMatch(/unsafe-|\*|https?:|script-src[^;]*(data:|blob:)/);
  }
});

test('from the welcome to the printed card nothing is asked of strangers and the policy stops nothing', async ({
  page,
  baseURL,
}) => {
  const watched = await watch(page, new URL(baseURL ?? '').origin);
  await page.goto('');
  await walkInterview(page, storyNamed('same-again').answers);
  await tap(page.locator('lw-review ~ .foot .main'));
  await openCard(page);
  await savedCard(page, () => tap(page.locator('[data-act="save"]')));
  await page.locator('iframe.twin').contentFrame().locator('h1').first().waitFor();
  await tap(page.locator('[data-act="hand"]'));
  await tap(page.locator('[data-act="handYes"]'));
  await tap(page.locator('[data-act="done"]'));
  await page.getByRole('button', { name: 'Start', exact: true }).waitFor();
  expect(watched).toEqual({ strangers: [], broken: [] });
});

test('a planted inline script is stopped by the policy, and seen', async ({ page, baseURL }) => {
  await page.goto('');
  const meta = `<meta http-equiv="Content-Security-Policy" content="${await policyOf(page)}">`;
  await page.route('**/planted.html', (route) =>
    route.fulfill({ contentType: 'text/html', body: fixture('inline-script.html').replace('<!-- POLICY -->', meta) }),
  );
  const watched = await watch(page, new URL(baseURL ?? '').origin);
  await page.goto('planted.html');
  await expect.poll(() => watched.broken.join()).toMatch(/script-src.*stopped inline/);
  expect(watched.broken.join()).toMatch(/img-src stopped http:\/\/elsewhere\.invalid/);
  expect(await page.title()).toBe('Planted faults');
});

test('a planted request to strangers is seen', async ({ page, baseURL }) => {
  const watched = await watch(page, new URL(baseURL ?? '').origin);
  await page.route('**/planted.html', (route) =>
    route.fulfill({ contentType: 'text/html', body: fixture('third-party.html') }),
  );
  await page.goto('planted.html');
  expect(watched.strangers).toEqual(['http://elsewhere.invalid/pixel.gif']);
});

const openGerman = async (page: Page, baseURL: string | undefined): Promise<Watched> => {
  const watched = await watch(page, new URL(baseURL ?? '').origin);
  await openState(page, 'ask-lately', 'de');
  return watched;
};

test('a page with all its words breaks nowhere', async ({ page, baseURL }) => {
  const { broken } = await openGerman(page, baseURL);
  await expect(page.getByRole('button', { name: 'Weiter' })).toBeVisible();
  expect(broken).toEqual([]);
});

test('a planted hole in the German words is not filled in English: it breaks, and is seen', async ({
  page,
  baseURL,
}) => {
  await page.route('**/assets/interview-*.js', async (route) => {
    const response = await route.fetch();
    const text = await response.text();
    // The word on the button, in the file that holds the German ones.
    const body = text.includes('Weiter') ? text.replace(/(["']?)continue\1:/, '$1continued$1:') : text;
    await route.fulfill({ response, body });
  });
  const { broken } = await openGerman(page, baseURL);
  await expect.poll(() => broken.join()).toContain('No words for "screen.continue" in "de"');
  await expect(page.getByText('Continue')).toHaveCount(0);
});
