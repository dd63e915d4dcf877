import { readFileSync } from 'node:fs';
import { type Download, expect, type Page, test } from '@playwright/test';
import { axeFindsNothing } from './axe-faults.ts';
import { storyNamed, tap, walkInterview } from './walk.ts';

async function openShop(page: Page, first: boolean): Promise<void> {
  await tap(page.locator('[data-act="staff"]'));
  await page.locator('input[name="pin"]').fill('2468');
  if (first) await page.locator('input[name="again"]').fill('2468');
  await page.locator('input[name="initials"]').fill('KB');
  await tap(page.locator('lw-pin button[type="submit"]'));
  await page.locator('lw-tickets h1').waitFor();
  await tap(page.locator('.tabs .tab').last());
  await page.locator('lw-stock-boxes').waitFor();
}

const offerFile = (page: Page, name: string, text: string | Buffer) =>
  page
    .locator('lw-stock-load input[type="file"]')
    .setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });

/** A file of fifty million bytes, dropped. */
const dropHuge = (page: Page) =>
  page.evaluate(() => {
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(new File(['x'.repeat(50_000_000)], 'huge.csv'));
    const drop = new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true });
    document.querySelector('.drop')?.dispatchEvent(drop);
  });

async function textOf(download: Download): Promise<string> {
  return readFileSync(await download.path(), 'utf8');
}

/** Four invented trail shoes in the size the story asks for, and three bad lines among them. */
const LIST = `\uFEFFshoe,model,shelf,lug depth (mm),drop (mm),box,us men,place,on hand
a,Toy <b>Adder</b>,men,4,6,a1,9.5,A1,1
b,Toy Bittern,men,4,7,b1,9.5,A2,1
c,Toy Curlew,men,4,8,c1,9.5,A3,1
c,,,,,c2,10,A3,two
d,"Toy
Dunlin",men,4,5,d1,9.5,A4,1
e,Toy Egret,men,4,99,e1,9.5,A5,1
f,Toy Finch,men,4,6,f1,9. Okt,A6,1
`;

/** Walks the story to its pairs, reads their names, and leaves the tablet free. */
async function pairsShown(page: Page): Promise<readonly string[]> {
  await walkInterview(page, storyNamed('same-again').answers);
  await tap(page.locator('lw-kiosk .foot .main'));
  await page.locator('.pair h3').first().waitFor();
  const names = await page.locator('.pair h3').allTextContents();
  for (const act of ['hand', 'handYes', 'done']) await tap(page.locator(`[data-act="${act}"]`));
  await page.locator('lw-welcome').waitFor();
  return names.map((name) => name.replace(/\s+/g, ' ').trim().slice(2));
}

test('a list with three bad lines is looked at, swapped in and still there; a box sold changes the line-up', async ({
  page,
}) => {
  await page.goto('');
  await openShop(page, true);
  const before = await page.locator('.as-of').textContent();
  await offerFile(page, 'new.csv', LIST);
  const findings = page.locator('.findings[data-severity="error"] li');
  await expect(findings).toHaveCount(3);
  await expect(findings.nth(0)).toContainText('Line 5, column “on hand”: “two”');
  await expect(findings.nth(1)).toContainText('Line 8, column “drop (mm)”: “99”');
  await expect(findings.nth(2)).toContainText('Line 9, column “us men”: “9. Okt”');
  await expect(page.locator('.offer h2')).toBeFocused();
  await axeFindsNothing(page);
  await expect(page.locator('.as-of')).toHaveText(before ?? '');
  const saving = page.waitForEvent('download');
  await tap(page.getByRole('button', { name: 'All findings as CSV' }));
  expect((await textOf(await saving)).trim().split('\n')).toHaveLength(4);

  await tap(page.locator('[data-act="swap"]'));
  await expect(page.locator('.as-of')).toContainText(/5 models · 4 boxes/);
  await page.reload();
  await openShop(page, false);
  await expect(page.locator('.as-of')).toContainText(/5 models · 4 boxes/);
  // There and back: the list before stays within reach.
  const back = page.locator('[data-act="stock-before"]');
  await tap(back);
  await expect(page.locator('.as-of')).toHaveText(before ?? '');
  await expect(back).toContainText('5 models');
  await tap(back);
  await expect(page.locator('.as-of')).toContainText(/5 models · 4 boxes/);
  await tap(page.locator('[data-act="lock"]'));

  const first = await pairsShown(page);
  expect(first).toHaveLength(3);
  const [sold = ''] = first;
  await openShop(page, false);
  await page.locator('lw-stock-boxes input[name="name"]').fill(sold.replace('Dunlin', '').trim());
  const row = page.locator('.box-rows li').filter({ hasText: sold.split(' ').at(-1) ?? '' });
  await tap(row.locator('[data-mark="sold"]'));
  await expect(row).toContainText('0 pairs here');
  await tap(page.locator('[data-act="lock"]'));
  const second = await pairsShown(page);
  expect(second).not.toContain(sold);
  expect([...second].sort()).toEqual(
    ['Toy <b>Adder</b>', 'Toy Bittern', 'Toy Curlew', 'Toy Dunlin'].filter((name) => name !== sold),
  );

  await openShop(page, false);
  await tap(page.locator('.marked summary'));
  await tap(page.locator('.marked .link'));
  await expect(page.locator('.marked')).toHaveCount(0);
});

test('one file takes stock and marks to a second tablet; a file that is none leaves everything as it was', async ({
  page,
  browser,
}) => {
  await page.goto('');
  await openShop(page, true);
  await offerFile(page, 'new.csv', LIST);
  await tap(page.locator('[data-act="swap"]'));
  await page.locator('lw-stock-boxes input[name="place"]').fill('A2');
  await tap(page.locator('[data-box="b1"] [data-mark="not-on-the-shelf"]'));
  await expect(page.locator('.marked summary')).toContainText('1 mark');
  const saving = page.waitForEvent('download');
  await tap(page.getByRole('button', { name: 'Copy for another tablet' }));
  const copy = await textOf(await saving);

  const tablet = await browser.newContext({ viewport: { width: 800, height: 1280 }, hasTouch: true, locale: 'de-DE' });
  const other = await tablet.newPage();
  await other.goto(page.url());
  await openShop(other, true);
  // The bench opens in the fitters' language; on this tablet somebody reads German.
  await other.locator('.bench-head .speech').selectOption('de');
  await expect(other.locator('html')).toHaveAttribute('lang', 'de');
  const before = await other.locator('.as-of').textContent();
  for (const offered of [
    () => offerFile(other, 'none.csv', ''),
    () => offerFile(other, 'torn.json', '{"kind":'),
    () => dropHuge(other),
  ]) {
    await offered();
    await expect(other.locator('.offer .findings li')).toHaveCount(1);
    await expect(other.locator('[data-act="swap"]')).toHaveCount(0);
    await tap(other.locator('[data-act="leave"]'));
  }
  await expect(other.locator('.as-of')).toHaveText(before ?? '');
  await offerFile(other, 'stock-copy.json', copy);
  await tap(other.locator('[data-act="swap"]'));
  await expect(other.locator('.as-of')).toContainText(/5 Modelle · 4 Kartons/);
  await other.locator('lw-stock-boxes input[name="place"]').fill('A2');
  await expect(other.locator('[data-box="b1"] .here')).toContainText('Nicht im Regal');
  await axeFindsNothing(other);
  await tablet.close();
});

test('the shop sets itself up: what is wrong is pointed out, what is saved counts at once, and the PIN changes', async ({
  page,
}) => {
  await page.goto('');
  await openShop(page, true);
  await tap(page.locator('[data-place="measuring"]'));
  await expect(page.locator('.measuring h1')).toBeFocused();
  await axeFindsNothing(page);
  await tap(page.locator('[data-place="lacks"]'));
  await expect(page.locator('lw-shop-lacks h1')).toBeFocused();
  await axeFindsNothing(page);
  await tap(page.locator('[data-place="settings"]'));
  await page.locator('.formats label').first().waitFor();
  await expect(page.locator('.ticks')).toContainText(['not read by a native speaker yet', 'Ramp']);
  await page.locator('input[name="name"]').fill('The <i>Other</i> Yard');
  await page.locator('input[name="warning"]').fill('19');
  await tap(page.locator('[data-act="save"]'));
  await expect(page.locator('input[name="warning"]')).toBeFocused();
  await expect(page.locator('#wrong-warning')).toContainText('from 20 to 120');
  await axeFindsNothing(page);
  await page.locator('input[name="warning"]').fill('25');
  await page.locator('input[name="languages"][value="de"]').uncheck();
  await page.locator('input[name="demo"]').uncheck();
  await page.locator('input[name="cardFormat"][value="a4"]').check();
  await tap(page.locator('[data-act="preview"]'));
  await expect(page.frameLocator('iframe.preview').locator('body')).toContainText('The <i>Other</i> Yard');
  await tap(page.locator('[data-act="save"]'));
  await expect(page.locator('.save')).toContainText('Saved.');
  const saving = page.waitForEvent('download');
  await tap(page.locator('[data-act="save-settings"]'));
  expect(JSON.parse(await textOf(await saving))).toMatchObject({
    settings: { warning: 25 },
    shop: { name: 'The <i>Other</i> Yard', languages: ['ar', 'en', 'es', 'fr'], cardFormat: 'a4' },
  });

  await page.locator('lw-pin-change input[name="old"]').fill('2468');
  await page.locator('lw-pin-change input[name="next"]').fill('13 57');
  await page.locator('lw-pin-change input[name="again"]').fill('1357');
  await tap(page.locator('lw-pin-change button'));
  await expect(page.locator('#pin-said')).toHaveText('The PIN is changed.');
  await tap(page.locator('[data-act="lock"]'));
  await expect(page.locator('lw-welcome')).toContainText('The <i>Other</i> Yard');
  await expect(page.locator('lw-welcome input[name="language"]')).toHaveCount(4);
  await expect(page.locator('lw-welcome input[name="language"][value="de"]')).toHaveCount(0);
  await expect(page.locator('.demo-mark')).toHaveCount(0);
  await tap(page.locator('[data-act="staff"]'));
  await page.locator('input[name="pin"]').fill('1357');
  await page.locator('input[name="initials"]').fill('KB');
  await tap(page.locator('lw-pin button[type="submit"]'));
  await page.locator('lw-tickets h1').waitFor();
});

test('a tablet with room for one list alone swaps in the new one, and says that the one before could not be kept', async ({
  page,
}) => {
  // The stock is kept by the worker, out of reach of the page: its own script is given a database that refuses.
  await page.route(/worker.*\.js/, async (route) => {
    const response = await route.fetch();
    const refuse = `{ const put = IDBObjectStore.prototype.put; IDBObjectStore.prototype.put = function (value, key) { if (key === 'before') throw new DOMException('full', 'QuotaExceededError'); return put.call(this, value, key); }; }`;
    await route.fulfill({ response, body: `${refuse}\n${await response.text()}` });
  });
  await page.goto('');
  await openShop(page, true);
  await offerFile(page, 'new.csv', LIST);
  await tap(page.locator('[data-act="swap"]'));
  await expect(page.locator('.as-of')).toContainText(/5 models · 4 boxes/);
  await expect(page.locator('lw-shop-stock .head [role="status"]')).toContainText('could not be kept');
  await expect(page.locator('[data-act="stock-before"]')).toHaveCount(0);
});
