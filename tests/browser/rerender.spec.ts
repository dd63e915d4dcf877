import { expect, type Page, test } from '@playwright/test';
import { openState } from './screens.ts';

/** Where each element stands on a page: the customer's, the fitter's, the shop's. */
const STATES = [
  'welcome',
  'ask-reason',
  'ask-lately',
  'ask-floors',
  'ask-now-size',
  'ask-liking',
  'signs-ticked',
  'body-marked',
  'review',
  'result-pairs',
  'bench-pin',
  'bench-tickets',
  'bench-edit-why',
  'bench-measure-odd',
  'bench-roll',
  'bench-compare',
  'bench-tried',
  'bench-chosen',
  'shop-boxes',
  'shop-lacks',
  'shop-card-format',
];

/**
 * Every reactive property of every element on the page, set anew: what does not lead to another rendering. A class
 * field that hides the accessor of its decorator does just that, without a sound.
 */
const deafProperties = (page: Page): Promise<{ seen: number; deaf: readonly string[] }> =>
  page.evaluate(async () => {
    interface Reactive extends HTMLElement {
      readonly isUpdatePending: boolean;
      [name: string]: unknown;
    }
    const all = [...document.querySelectorAll<Reactive>('*')].filter(({ localName }) => localName.startsWith('lw-'));
    // One of each kind: a trap sits in the class.
    const elements = [...new Map(all.map((element) => [element.localName, element])).values()];
    const deaf: string[] = [];
    let seen = 0;
    const atRest = async (): Promise<void> => {
      while (elements.some((element) => element.isUpdatePending)) await new Promise((resolve) => setTimeout(resolve));
    };
    for (const element of elements) {
      const properties = (element.constructor as unknown as { elementProperties: Map<string, unknown> })
        .elementProperties;
      for (const name of properties.keys()) {
        await atRest();
        const before = element[name];
        element[name] = { other: before };
        if (!element.isUpdatePending) deaf.push(`${element.localName}.${name}`);
        // Rendering waits for the next microtask: what stood there is back by then.
        element[name] = before;
        seen += 1;
      }
    }
    return { seen, deaf: [...new Set(deaf)] };
  });

test('every property of every element on every screen renders anew when it changes', async ({ page }) => {
  // Two dozen pages, one after the other.
  test.setTimeout(120_000);
  for (const state of STATES) {
    await openState(page, state);
    const { seen, deaf } = await deafProperties(page);
    expect(seen, state).toBeGreaterThan(5);
    expect(deaf, state).toEqual([]);
  }
});

test('a changed property is seen on the screen', async ({ page }) => {
  await openState(page, 'ask-reason');
  const current = page.locator('.sections [aria-current="step"]');
  await expect(current).toHaveText('Why');
  await page.locator('lw-stub').evaluate((stub) => Object.assign(stub, { at: 'review' }));
  await expect(current).toHaveCount(0);
  await page.locator('lw-stub').evaluate((stub) => Object.assign(stub, { at: 'floors' }));
  await expect(current).toHaveText('Where');
});

test('a planted field that hides its accessor is found deaf', async ({ page }) => {
  await openState(page, 'ask-reason');
  await page.locator('lw-stub').evaluate((stub) => {
    const at = Reflect.get(stub, 'at');
    Object.defineProperty(stub, 'at', { value: at, writable: true, configurable: true });
  });
  expect((await deafProperties(page)).deaf).toEqual(['lw-stub.at']);
});
