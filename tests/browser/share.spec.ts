import { expect, type Page, test } from '@playwright/test';
import { openState } from './screens.ts';
import { openCard, storyNamed, tap, walkInterview } from './walk.ts';

test.use({ reducedMotion: 'reduce' });

interface Shared {
  readonly name: string;
  readonly type: string;
  readonly begins: string;
  /** Whether the sheet was opened by a tap, as browsers ask. */
  readonly tapped: boolean;
}

/** A device with a share sheet; `ends` is how the customer leaves it. Gives what was put into the sheet. */
async function withShareSheet(page: Page, ends: 'shared' | 'AbortError' | 'NotAllowedError'): Promise<Shared[]> {
  const shared: Shared[] = [];
  await page.exposeFunction('putInSheet', (what: Shared) => shared.push(what));
  await page.addInitScript((how) => {
    navigator.canShare = (data) => data?.files?.every(({ type }) => type === 'application/pdf') ?? false;
    navigator.share = async ({ files } = {}) => {
      for (const file of files ?? []) {
        const begins = await file.slice(0, 5).text();
        const tapped = navigator.userActivation.isActive;
        await (globalThis as unknown as { putInSheet: (what: Shared) => Promise<void> }).putInSheet({
          name: file.name,
          type: file.type,
          begins,
          tapped,
        });
      }
      if (how !== 'shared') throw new DOMException('The sheet was closed', how);
    };
  }, ends);
  return shared;
}

const share = (page: Page) => page.locator('[data-act="share"]');
const status = (page: Page) => page.locator('lw-outcome [role="status"]');

test('a customer shares their card from a device with a share sheet, and not before they tap', async ({ page }) => {
  const shared = await withShareSheet(page, 'shared');
  await page.goto('');
  await walkInterview(page, storyNamed('same-again').answers);
  const ticket = ((await page.locator('.ticket strong').textContent()) ?? '').trim();
  await tap(page.locator('lw-review ~ .foot .main'));
  await openCard(page);
  expect(shared).toEqual([]);
  await tap(share(page));
  await expect.poll(() => shared.length).toBe(1);
  expect(shared).toEqual([
    { name: `${ticket.replace(' ', '-')}.pdf`, type: 'application/pdf', begins: '%PDF-', tapped: true },
  ]);
  await expect(status(page)).toBeEmpty();
});

test('a share sheet closed without a choice is no matter, and one that fails says what to do instead', async ({
  page,
}) => {
  const closed = await withShareSheet(page, 'AbortError');
  await openState(page, 'card');
  await tap(share(page));
  await expect.poll(() => closed.length).toBe(1);
  await expect(status(page)).toBeEmpty();
  await page.evaluate(() => {
    navigator.share = () => Promise.reject(new DOMException('Too late after the tap', 'NotAllowedError'));
  });
  await tap(share(page));
  await expect(status(page)).toHaveText('Sharing did not work. Save or print your card instead.');
  await expect(page.locator('[data-act="save"]')).toBeVisible();
});

test('there is nothing to share with on a device without a share sheet, or for a card that is printed as a page', async ({
  page,
}) => {
  await page.addInitScript(() => Object.defineProperty(navigator, 'canShare', { value: undefined }));
  await openState(page, 'card');
  await expect(page.locator('[data-act="print"]')).toBeVisible();
  await expect(share(page)).toHaveCount(0);
  await withShareSheet(page, 'shared');
  await openState(page, 'card', 'ar');
  await expect(page.locator('[data-act="print"]')).toBeVisible();
  await expect(share(page)).toHaveCount(0);
});
