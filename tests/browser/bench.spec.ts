import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { PNG } from 'pngjs';
import { encodeQR } from 'qr';
import { allText, openPdf } from '../card/read-pdf.ts';
import { benchWords, closeTicket, en, givePin, handOver, openBench, override, toResult } from './at-the-bench.ts';
import { axeFindsNothing } from './axe-faults.ts';
import { cardCode } from './card-codes.ts';
import { plain } from './pdf-text.ts';
import { flow, storyNamed } from './walk.ts';

const { card: cardWords } = JSON.parse(readFileSync('flows/words/en/card.json', 'utf8'));

// Movement has its own checks; without it no tap waits for a page to come to rest.
test.use({ reducedMotion: 'reduce' });

test('a visit goes from the customer’s last answer to the final card at the bench', async ({ page }) => {
  // A quarter of a minute alone; two cores shared with other tests take longer.
  test.setTimeout(120_000);
  await page.goto('');
  await toResult(page, storyNamed('netball-old-sprain').answers);
  await handOver(page);
  await openBench(page);
  const row = page.locator('.ticket-row');
  await expect(row).toContainText('Netball');
  // An old sprain: something to mind, and in the list not what.
  await expect(row).toContainText(en.hold.mind);
  await expect(row).not.toContainText('twisted');
  await axeFindsNothing(page);
  await row.tap();

  const ticket = page.locator('lw-ticket');
  await expect(ticket.locator('.glance li').first()).toBeVisible();
  await expect(ticket.locator('.outcome')).toContainText('take care: Gives way at times');
  const before = (await ticket.locator('.glance ol').textContent()) ?? '';
  await ticket.locator('li[data-question="budget"] [data-edit]').tap();
  await ticket.locator('lw-edit-answer').getByRole('button', { name: en.edit.keep, exact: true }).tap();
  await expect(ticket.locator('lw-edit-answer')).toHaveCount(0);
  await override(page, 'budget', 'Up to €160', 'asked-again');
  await expect(ticket.locator('.glance ol')).not.toHaveText(before);
  await expect(ticket.locator('.moved')).toContainText('came in');
  await expect(ticket.locator('.moved')).toContainText('because of “What is the most you want to pay?”');
  await override(page, 'closure', "I don't mind", 'mistapped');
  await expect(ticket.locator('.changed').first()).toContainText('LT');
  await expect(ticket.locator('li[data-question="budget"]')).toContainText('Up to €120');
  await axeFindsNothing(page);

  await page.keyboard.press('l');
  const first = ticket.locator('.line-up .pair').first();
  const name = ((await first.locator('h3 span').last().textContent()) ?? '').trim();
  await first.getByRole('button', { name: en.lines.setAside }).tap();
  await first.locator('[data-reason="had-it-before"]').tap();
  await expect(ticket.locator('.moved')).toContainText(en.reason['had-it-before']);
  await expect(ticket.locator('.line-up h3').filter({ hasText: name })).toHaveCount(0);
  await page.keyboard.press('u');
  await expect(ticket.locator('.line-up h3').filter({ hasText: name })).toHaveCount(1);
  for (const box of (await ticket.locator('.pair-acts input').all()).slice(0, 2)) await box.check();
  await expect(ticket.locator('lw-compare .strip').first()).toBeVisible();
  await axeFindsNothing(page);

  await page.keyboard.press('t');
  await page.locator('.tab').nth(1).tap();
  await expect(ticket.locator('.line-up .pair').first()).toBeVisible();
  await expect(ticket).not.toContainText('The stock has changed');
  await page.keyboard.press('d');
  await ticket.locator('lw-decide input[name="chosen"]').first().check();
  await expect(ticket.locator('.final')).toBeVisible();
  await axeFindsNothing(page);
  const chosen = await ticket.locator('.decide').first().locator('strong').first().textContent();
  await ticket.locator('[data-card="customer-preview"]').tap();
  const twin = page.frameLocator('iframe.twin').locator('body');
  await expect(twin).toContainText((chosen ?? '').slice(2));
  await expect(twin).not.toContainText('Dockenfell');
  for (const copy of ['customer', 'fitter']) {
    const download = page.waitForEvent('download');
    await ticket.locator(`[data-card="${copy}-save"]`).tap();
    const pdf = await openPdf(new Uint8Array(readFileSync(await (await download).path())));
    // Points: the customer's card on the shop's A5, the fitter's copy on A4 (ISO 216).
    const [, , width = 0] = (await pdf.getPage(1)).view;
    expect(Math.round((width / 72) * 25.4), copy).toBe(copy === 'fitter' ? 210 : 148);
    const decided = plain(await allText(pdf)).includes(plain(cardWords.bench.decision.heading));
    expect(decided, `the record on the ${copy}'s copy`).toBe(copy === 'fitter');
  }
  await closeTicket(page);
  await expect(page.locator('.ticket-row')).toHaveCount(0);
});

test('wrong PINs slow down, and a reload does not shorten the wait', async ({ page }) => {
  // The wait is counted by the clock on the wall; a slow machine must not sit it out.
  await page.clock.setFixedTime(new Date());
  await page.goto('');
  await openBench(page);
  await page.locator('[data-act="lock"]').tap();
  await page.locator('[data-act="staff"]').tap();
  const open = page.getByRole('button', { name: en.pin.open, exact: true });
  const attempt = () => givePin(page, '1357');
  for (let n = 0; n < 2; n += 1) {
    await attempt();
    await expect(page.locator('#pin-error')).toHaveText(en.pin.wrong);
  }
  await attempt();
  await expect(page.locator('#pin-error')).toContainText('Wait');
  await expect(open).toBeDisabled();
  await axeFindsNothing(page);
  await page.reload();
  await page.locator('[data-act="staff"]').tap();
  await givePin(page);
  await expect(page.locator('#pin-error')).toContainText('Wait');
});

test('codes that will not do say what happened and what to do', async ({ page }) => {
  await page.goto('');
  await openBench(page);
  const error = page.locator('#code-error');
  const give = async (text: string) => {
    await page.locator('input[name="code"]').fill(text);
    await page.locator('lw-code-reader').getByRole('button', { name: en.code.open, exact: true }).tap();
  };
  const code = cardCode('nurse-on-tiles');
  await give('https://example.org/menu');
  await expect(error).toContainText('not from one of our cards');
  await give(code.slice(0, -9));
  await expect(error).toContainText('The end of this code is missing');
  await give(code.slice(0, 20) + (code[20] === 'A' ? 'B' : 'A') + code.slice(21));
  await expect(error).toContainText('damaged');
  await give(cardCode('nurse-on-tiles', { version: flow.version + 1 }));
  await expect(error).toContainText('questions have changed');
  await page.getByRole('button', { name: en.code.camera, exact: true }).tap();
  await expect(error).toContainText('camera');
  const picture = page.locator('input[name="picture"]');
  await picture.setInputFiles({ name: 'list.png', mimeType: 'image/png', buffer: Buffer.from('no picture') });
  await expect(error).toHaveText(en.code['no-picture']);
  await picture.setInputFiles({ name: 'white.png', mimeType: 'image/png', buffer: square() });
  await expect(error).toHaveText(en.code['no-code']);
  await picture.setInputFiles({ name: 'card.png', mimeType: 'image/png', buffer: square(code) });
  await expect(page.locator('lw-answers')).toContainText('Nursing');
});

test('a card held before the camera opens its visit, and the camera goes off', async ({ page }) => {
  // Stands in for the camera alone: nothing in view at first, then a card a hand's breadth away.
  await page.addInitScript(
    async (card) => {
      const canvas = Object.assign(document.createElement('canvas'), { width: 1280, height: 720 });
      const stream = canvas.captureStream(10);
      const light = canvas.getContext('2d');
      const view = Object.assign(new Image(), { src: card });
      let frames = 0;
      setInterval(() => {
        frames += 1;
        light?.fillRect(0, 0, 1280, 720);
        if (frames > 10) light?.drawImage(view, 400, 120, 480, 480);
      }, 100);
      Object.defineProperty(navigator.mediaDevices, 'getUserMedia', { value: async () => stream });
      Object.assign(window, { camera: stream });
    },
    `data:image/png;base64,${square(cardCode('nurse-on-tiles')).toString('base64')}`,
  );
  await page.goto('');
  await openBench(page);
  await page.getByRole('button', { name: en.code.camera, exact: true }).tap();
  await expect(page.locator('video.camera')).toBeVisible();
  await expect(page.locator('lw-answers')).toContainText('Nursing');
  const live = () =>
    page.evaluate(() =>
      (window as unknown as { camera: MediaStream }).camera.getTracks().map((track) => track.readyState),
    );
  expect(await live()).toEqual(['ended']);
});

test('a link opens its visit behind the PIN, beside two blank ones', async ({ page }) => {
  await page.goto('');
  await openBench(page);
  for (let n = 0; n < 2; n += 1) {
    await page.getByRole('button', { name: en.tickets.blank, exact: true }).tap();
    await expect(page.locator('.ask-now').first()).toBeVisible();
    await page.keyboard.press('t');
  }
  await axeFindsNothing(page);
  await page.locator('[data-act="lock"]').tap();
  await page.goto('about:blank');
  await page.goto(`/#c=${cardCode('nurse-on-tiles')}`);
  await page.locator('lw-pin').waitFor();
  expect(page.url()).not.toContain('#c=');
  await givePin(page);
  await expect(page.locator('lw-answers')).toContainText('Nursing');
  await page.keyboard.press('t');
  for (const row of [0, 1]) {
    await page.locator('.ticket-row').nth(row).tap();
    await page.locator('lw-answers .answer').first().waitFor();
    await page.keyboard.press('t');
  }
  const open = page.locator('.tab:not([data-tab="tickets"], [data-tab="shop"])');
  await expect(open).toHaveCount(3);
  await page.locator('.bench-head .speech').selectOption('de');
  await expect(page.locator('h1')).toHaveText(benchWords('de').tickets.title);
  await open.last().tap();
  await expect(page.locator('.ask-now').first()).toBeVisible();
  await axeFindsNothing(page);
});

test('two tabs on one ticket: the second is told, and neither change is lost', async ({ page, context }) => {
  await page.goto('');
  await openBench(page);
  await page.getByRole('button', { name: en.tickets.blank, exact: true }).tap();
  await page.locator('lw-answers').waitFor();
  const other = await context.newPage();
  await other.goto('');
  await openBench(other);
  await other.locator('.ticket-row').tap();
  await other.locator('lw-answers').waitFor();
  const answer = async (tab: Page, question: string, option: string) => {
    await tab.locator(`li[data-question="${question}"] [data-edit]`).tap();
    await tab.locator('lw-edit-answer').getByRole('button', { name: option, exact: true }).tap();
  };
  await answer(page, 'shelf', "Women's");
  await expect(page.locator('li[data-question="shelf"] .changed')).toBeVisible();
  await answer(other, 'age-band', '18 to 64');
  await expect(other.locator('.said')).toContainText(en.note.newer);
  await expect(other.locator('li[data-question="shelf"]')).toContainText("Women's");
  await other.locator('[data-act="redo"]').tap();
  await expect(other.locator('li[data-question="age-band"]')).toContainText('18 to 64');
  await expect(other.locator('li[data-question="shelf"]')).toContainText("Women's");
});

/** A picture of a card's square, four pixels to a dot; without text a white one. */
function square(text?: string): Buffer {
  const dots = text === undefined ? [[false]] : encodeQR(text, 'raw', { ecc: 'medium' });
  const size = Math.max(200, dots.length * 4);
  const picture = new PNG({ width: size, height: size });
  picture.data.fill(255);
  dots.forEach((row, y) => {
    row.forEach((dark, x) => {
      if (!dark) return;
      for (let at = 0; at < 16; at += 1) {
        const pixel = ((y * 4 + (at >> 2)) * size + x * 4 + (at & 3)) * 4;
        picture.data.fill(0, pixel, pixel + 3);
      }
    });
  });
  return PNG.sync.write(picture);
}
