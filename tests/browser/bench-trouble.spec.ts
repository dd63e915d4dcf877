import { expect, type Page, test } from '@playwright/test';
import { closeTicket, en, GLANCE, givePin, LINE_UP, override, pairNames, showView } from './at-the-bench.ts';
import { cardCode } from './card-codes.ts';
import { tap } from './walk.ts';

// Movement has its own checks; without it no tap waits for a page to come to rest.
test.use({ reducedMotion: 'reduce' });

const ticket = (page: Page) => page.locator('lw-ticket');
const error = (page: Page) => page.locator('#code-error');
const codeOf = (language: string) => cardCode('same-again', { language });

/** A card's link opened as a camera app does, and the bench unlocked: the ticket stands. */
async function openTicket(page: Page): Promise<void> {
  await page.goto(`/#c=${codeOf('en')}`);
  await givePin(page);
  await page.locator('lw-answers .answer').first().waitFor();
}

async function giveCode(page: Page, text: string): Promise<void> {
  await page.locator('input[name="code"]').fill(text);
  await tap(page.locator('lw-code-reader button[type="submit"]'));
}

async function lockAndReturn(page: Page): Promise<void> {
  await tap(page.locator('[data-act="lock"]'));
  await tap(page.locator('[data-act="staff"]'));
  await page.locator('lw-pin h1').waitFor();
}

/** Four invented trail shoes in the size the story asks for, a box of one pair each. */
const TOYS = ['Toy Adder', 'Toy Bittern', 'Toy Curlew', 'Toy Dunlin'] as const;
const list = (toys: readonly string[], onHand = 1): string =>
  ['shoe,model,shelf,lug depth (mm),drop (mm),box,us men,place,on hand']
    .concat(
      toys.map((name, at) => `${name.slice(4, 5)},${name},men,4,${5 + at},${name.slice(4, 5)}1,9.5,A${at},${onHand}`),
    )
    .join('\n');
const inBox = (page: Page, name: string, act: string) =>
  page.locator('lw-pull-list li').filter({ hasText: name }).getByRole('button', { name: act });

test('a box that is not there, or sold, changes the line-up in one tap; every other ticket says what is gone', async ({
  page,
}) => {
  test.setTimeout(90_000);
  await page.route('**/shop/stock.csv', (route) => route.fulfill({ contentType: 'text/csv', body: list(TOYS) }));
  await openTicket(page);
  const before = await pairNames(page, GLANCE);
  const [gone = '', sold = '', stays = ''] = before;
  const came = TOYS.find((name) => !before.includes(name)) ?? '';
  const first = await ticket(page).locator('h1').textContent();
  await tap(page.locator('[data-tab="tickets"]'));
  await giveCode(page, codeOf('de'));
  await expect(ticket(page).locator('h1')).not.toHaveText(first ?? '');
  await expect(ticket(page).locator('.from-card')).toHaveText(en.ticket.fromCard);
  expect(await pairNames(page, GLANCE)).toEqual(before);

  const lineUp = page.locator(LINE_UP);
  const moved = ticket(page).locator('.moved');
  await showView(page, 'line-up');
  await tap(inBox(page, gone, en.pull.notThere));
  await expect(moved).toContainText(`${gone} went out: ${en.moved['not-on-the-shelf']}`);
  await expect(moved).toContainText(`${came} came in`);
  expect(await pairNames(page, LINE_UP)).toEqual(expect.arrayContaining([sold, stays, came]));
  await tap(inBox(page, sold, en.pull.sold));
  await expect(moved).toContainText(`${sold} went out: ${en.moved.sold}`);
  await expect(lineUp).toHaveCount(2);

  await tap(page.locator(`[data-tab="${first}"]`));
  await expect(ticket(page).locator('.said').first()).toHaveText(
    en.note['stock-changed'].replace('{{shoes}}', `${gone} and ${sold}`),
  );
  await expect(page.locator(GLANCE)).toHaveCount(2);
  await showView(page, 'line-up');
  await tap(ticket(page).locator('lw-pull-list summary'));
  await tap(ticket(page).locator('lw-pull-list details .link').first());
  await expect(lineUp.filter({ hasText: gone })).toHaveCount(1);
  await expect(lineUp.filter({ hasText: sold })).toHaveCount(0);

  await tap(page.locator('[data-tab="shop"]'));
  const other = list(TOYS.filter((name) => name !== stays));
  await page
    .locator('lw-stock-load input[type="file"]')
    .setInputFiles({ name: 'new.csv', mimeType: 'text/csv', buffer: Buffer.from(other) });
  await tap(page.locator('[data-act="swap"]'));
  await expect(page.locator('.as-of')).toContainText('3 models');
  await tap(page.locator(`[data-tab="${first}"]`));
  await expect(ticket(page).locator('.said').first()).toHaveText(en.note['stock-changed'].replace('{{shoes}}', stays));
});

test('a pair taken at the end of a visit leaves the shelf with the closing, one for each customer, and can come back', async ({
  page,
}) => {
  test.setTimeout(120_000);
  await page.route('**/shop/stock.csv', (route) => route.fulfill({ contentType: 'text/csv', body: list(TOYS, 2) }));
  await openTicket(page);
  const [name = ''] = await pairNames(page, GLANCE);
  const take = async (): Promise<void> => {
    await showView(page, 'feet');
    await tap(page.locator('label:has(input[name="try-on-size"][value="too-small"])'));
    await showView(page, 'decide');
    const row = page.locator('.decide .choice').filter({ hasText: name }).first();
    await expect(row).toContainText('Size: too small');
    await tap(row);
    await tap(page.locator('[data-act="close"]'));
    await expect(page.locator('input[name="takes-off"]')).toBeChecked();
    await tap(page.locator('[data-act="close-yes"]'));
    await expect(page.locator('lw-tickets')).toContainText(en.note['closed-sold']);
  };
  await take();

  await giveCode(page, codeOf('de'));
  // One of two is left.
  await expect(page.locator(GLANCE).filter({ hasText: name })).toHaveCount(1);
  await take();
  await giveCode(page, codeOf('fr'));
  await expect(page.locator(GLANCE).first()).toBeVisible();
  await expect(page.locator(GLANCE).filter({ hasText: name })).toHaveCount(0);
  await showView(page, 'line-up');
  await tap(ticket(page).locator('lw-pull-list summary'));
  await tap(ticket(page).locator('lw-pull-list details .link').first());
  await expect(page.locator(LINE_UP).filter({ hasText: name })).toHaveCount(1);
});

test('a pair that stays in the shop after all stays on the shelf', async ({ page }) => {
  test.setTimeout(90_000);
  await page.route('**/shop/stock.csv', (route) => route.fulfill({ contentType: 'text/csv', body: list(TOYS) }));
  await openTicket(page);
  const before = await pairNames(page, GLANCE);
  await showView(page, 'decide');
  await tap(page.locator('.decide .choice').first());
  await tap(page.locator('[data-act="close"]'));
  await tap(page.locator('label:has(input[name="takes-off"])'));
  await tap(page.locator('[data-act="close-yes"]'));
  await expect(page.locator('lw-tickets .said')).toHaveText(en.note.closed);
  await giveCode(page, codeOf('de'));
  expect(await pairNames(page, GLANCE)).toEqual(before);
});

test('a forgotten PIN is set anew only after a minute and after every visit was wiped, and that is said before', async ({
  page,
}) => {
  test.setTimeout(90_000);
  await page.clock.install();
  await openTicket(page);
  await lockAndReturn(page);
  const button = (name: string) => page.getByRole('button', { name, exact: true });
  await tap(button(en.pin.forgot));
  await expect(page.getByRole('status')).toContainText(en.pin.forgetWarning);
  await tap(button(en.pin.forgetNo));
  await givePin(page);
  await expect(page.locator('.ticket-row, lw-ticket')).not.toHaveCount(0);
  await lockAndReturn(page);
  await tap(button(en.pin.forgot));
  await page.clock.runFor(55_000);
  await expect(button(en.pin.forgetYes)).toBeDisabled();
  await page.clock.runFor(6_000);
  await tap(button(en.pin.forgetYes));
  await expect(page.locator('lw-pin h1')).toHaveText(en.pin.setTitle);
  await givePin(page, '97531');
  await expect(page.locator('lw-tickets')).toContainText(en.tickets.none);
  await lockAndReturn(page);
  await givePin(page);
  await expect(page.locator('#pin-error')).toHaveText(en.pin.wrong);
  await givePin(page, '97531');
  await expect(page.locator('lw-tickets')).toContainText(en.tickets.none);
});

test('the bench locks after a quarter of an hour alone; a clock set back locks it and is told with what it cost', async ({
  page,
}) => {
  test.setTimeout(90_000);
  await page.clock.install();
  await openTicket(page);
  await override(page, 'shelf', 'Any shelf', 'asked-again');
  await expect(page.locator('li[data-question="shelf"] .changed')).toBeVisible();
  await page.clock.fastForward('14:30');
  await expect(ticket(page)).toHaveCount(1);
  await page.clock.fastForward('01:00');
  await expect(page.getByRole('status')).toHaveText(en.note.idle);
  await expect(ticket(page)).toHaveCount(0);
  await givePin(page);
  await expect(page.locator('li[data-question="shelf"] .changed')).toBeVisible();

  await page.clock.setSystemTime(await page.evaluate(() => Date.now() - 2 * 60_000));
  await page.clock.runFor(16_000);
  await expect(page.getByRole('status')).toHaveText(en.note['clock-lock']);
  await givePin(page);
  await expect(page.locator('li[data-question="shelf"] .changed')).toBeVisible();

  await page.clock.setSystemTime(await page.evaluate(() => Date.now() - 60 * 60_000));
  await page.clock.runFor(16_000);
  await expect(page.getByRole('status')).toHaveText(en.note['clock-back']);
  await givePin(page);
  await expect(page.locator('lw-tickets')).toContainText(en.tickets.none);
  await giveCode(page, codeOf('en'));
  await expect(page.locator('lw-answers')).toContainText('Running on trails');
});

/** A disk that takes nothing more, until it is given room. */
const fill = (page: Page) =>
  page.evaluate(() => {
    const { put } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
    Object.assign(window, {
      makeRoom: () => {
        IDBObjectStore.prototype.put = put;
      },
    });
  });
const makeRoom = (page: Page) => page.evaluate(() => Reflect.get(window, 'makeRoom')());

test('a full store loses no change while the page is open, says what to do, and closing a ticket still works', async ({
  page,
}) => {
  test.setTimeout(90_000);
  await openTicket(page);
  await fill(page);
  await override(page, 'shelf', 'Any shelf', 'asked-again');
  await expect(ticket(page).getByRole('alert')).toHaveText(en.note.unsaved);
  await expect(page.locator('li[data-question="shelf"] .said-so strong')).toHaveText('Any shelf');
  await tap(page.locator('[data-tab="tickets"]'));
  await tap(page.getByRole('button', { name: en.tickets.blank, exact: true }));
  await expect(error(page)).toHaveText(en.note['not-made']);
  await lockAndReturn(page);
  await givePin(page);
  await expect(page.locator('#pin-error')).toHaveText(en.pin['not-checked']);
  await makeRoom(page);
  await givePin(page);

  const row = page.locator('.ticket-row');
  await tap(row);
  await override(page, 'age-band', '65 or over', 'mistapped');
  await expect(page.locator('lw-answers .changed').first()).toBeVisible();
  await fill(page);
  await showView(page, 'decide');
  await tap(page.locator('lw-decide label').first());
  await expect(ticket(page).getByRole('alert')).toHaveText(en.note.unsaved);
  await closeTicket(page, tap, en.note['closed-uncounted']);
  await expect(row).toHaveCount(0);
});

test('a link with a code that will not do says so after the PIN, and once', async ({ page }) => {
  const code = codeOf('en');
  await page.goto(`/#c=${code.slice(0, 20)}${code[20] === 'A' ? 'B' : 'A'}${code.slice(21)}`);
  await givePin(page);
  await expect(error(page)).toContainText('damaged');
  await tap(page.locator('[data-tab="shop"]'));
  await tap(page.locator('[data-tab="tickets"]'));
  await page.locator('lw-tickets h1').waitFor();
  await expect(error(page)).toHaveCount(0);
});

test('a visit kept by a later kiosk is counted and left alone, and the others open as ever', async ({ page }) => {
  await openTicket(page);
  const name = await ticket(page).locator('h1').textContent();
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('lacewing');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const work = opening.result.transaction('visits', 'readwrite');
          const finishedAt = new Date().toISOString();
          work.objectStore('visits').put({ format: 2, finishedAt, parts: [] }, 'later 1');
          work.objectStore('visits').put(null, 'torn 2');
          work.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
  );
  await tap(page.locator('[data-tab="tickets"]'));
  await expect(page.locator('lw-tickets .head')).toContainText(/cannot read: [12]\./);
  const rows = page.locator('lw-tickets .ticket-row');
  await expect(rows).toHaveCount(1);
  await tap(rows.first());
  await expect(ticket(page).locator('h1')).toHaveText(name ?? '');
});
