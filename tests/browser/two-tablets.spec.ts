import { readFileSync } from 'node:fs';
import { type Browser, expect, type Page, test } from '@playwright/test';
import { readCardCode } from '../../src/visit/card-code.ts';
import { codeInPicture, openPdf } from '../card/read-pdf.ts';
import {
  benchWords,
  closeTicket,
  en,
  GLANCE,
  givePin,
  openBench,
  override,
  pairNames,
  showView,
  toResult,
  tryOnWords,
} from './at-the-bench.ts';
import { report, watchMoves } from './bench-figures.ts';
import { tables } from './card-codes.ts';
import { plain, savedCard } from './pdf-text.ts';
import { type Act, flow, openCard, storyNamed, tap } from './walk.ts';

// Movement has its own checks; without it no tap waits for a page to come to rest.
test.use({ reducedMotion: 'reduce' });

/** As coarse as a picture of the card may be: what the code on paper is made for. */
const DPI = 110;
const HEALTH = flow.sections.flatMap(({ questions }) => questions.flatMap(({ id, health }) => (health ? [id] : [])));

const newTablet = async (browser: Browser): Promise<Page> => (await browser.newContext()).newPage();

/** Saves the card shown on the customer's tablet, and reads the address in a picture of its first page. */
async function addressOnCard(page: Page): Promise<string> {
  const waiting = page.waitForEvent('download');
  await tap(page.locator('[data-act="save"]'));
  const pdf = await openPdf(new Uint8Array(readFileSync(await (await waiting).path())));
  const codes = await codeInPicture(pdf, DPI);
  expect(codes).toHaveLength(1);
  return codes[0] ?? '';
}

/** As a camera app opens it: a page of its own, and nothing typed. */
async function openLink(page: Page, address: string): Promise<void> {
  await page.goto('about:blank');
  await page.goto(address);
}

const [NOT_HANDED] = en.ticket.notHanded.split('{{');

test('a visit begun on the customer’s tablet ends on the fitter’s, with nothing but the card between them', async ({
  browser,
  baseURL,
}) => {
  test.setTimeout(180_000);
  const { answers } = storyNamed('netball-old-sprain');
  const customer = await newTablet(browser);
  await customer.goto('');
  const shown = await toResult(customer, answers);
  const sizes = await customer.locator('lw-result .boxes li:first-child > strong:first-child').allTextContents();
  const shelves = await customer.locator('lw-result .boxes li:first-child > .shelf').allTextContents();
  expect([shown.length, sizes.length, shelves.length]).toEqual([3, 3, 3]);
  expect(sizes.filter((size) => !size.startsWith('UK '))).toEqual([]);
  await openCard(customer);
  const address = await addressOnCard(customer);
  expect(address.startsWith(`${baseURL}#c=`)).toBe(true);

  const { value: carried } = readCardCode(address, flow, tables);
  const told = Object.keys(carried?.answers ?? {});
  expect(told).toEqual(Object.keys(answers).filter((id) => !HEALTH.includes(id)));
  expect(carried?.hold).toBe('none');

  const fitter = await newTablet(browser);
  await fitter.goto('');
  await openBench(fitter);
  await fitter.locator('[data-act="lock"]').tap();
  const from = Date.now();
  let taps = 0;
  const counted: Act = async (on) => {
    taps += 1;
    await tap(on);
  };
  const sofar = () => ({ taps, seconds: (Date.now() - from) / 1000 });
  await openLink(fitter, address);
  await givePin(fitter, undefined, 'LT', counted);
  const ticket = fitter.locator('lw-ticket');
  expect(await pairNames(fitter, GLANCE)).toEqual(shown);
  const lineUpShown = sofar();
  expect(fitter.url()).not.toContain('#c=');
  for (const id of HEALTH) {
    const row = ticket.locator(`li[data-question="${id}"]`);
    if ((await row.count()) > 0) await expect(row.locator('strong')).toHaveText(en.answers.private);
  }
  await expect(ticket).toContainText(NOT_HANDED);
  await expect(ticket.locator('.outcome')).toContainText(en.hold.none);

  await showView(fitter, 'line-up', counted);
  for (const at of shown.keys()) {
    const box = ticket.locator('.line-up .pair').nth(at).locator('.boxes li').first();
    // In the system the customer gave their size in, as on the card in their hand.
    await expect(box.locator('strong').first()).toHaveText(sizes[at] ?? '');
    await expect(box).toContainText(shelves[at] ?? '');
    // Why that box, whatever its label says beside the calculated size.
    await expect(box).toContainText(/\d mm inside|by its label|by the foot length/);
  }
  const boxNamed = sofar();

  const moves = await watchMoves(fitter);
  await showView(fitter, 'measure', counted);
  await counted(ticket.locator('[data-part="old-pair"]'));
  await ticket.locator('input[name="old-pair-insoleLength"]').fill('258');
  await counted(ticket.locator('label:has(input[name="old-pair-heelLining"][value="torn"])'));
  await expect(ticket.locator('lw-measure-old-pair .notes li').first()).toBeVisible();
  await counted(ticket.locator('[data-part="feet"]'));
  for (const [side, length] of [
    ['left', '251'],
    ['right', '250'],
  ] as const) {
    await counted(ticket.locator(`input[name="length-${side}"]`));
    await ticket.locator(`input[name="length-${side}"]`).fill(length);
    await fitter.keyboard.press('Enter');
  }
  await expect(ticket.locator('lw-size-said [data-row="foot"]')).toContainText('251');

  await showView(fitter, 'profile', counted);
  await override(fitter, 'budget', 'Up to €160', 'asked-again', counted);
  await expect(ticket.locator('.moved')).toContainText('because of “What is the most you want to pay?”');
  await override(fitter, 'closure', "I don't mind", 'seen', counted);
  for (const [question, reason, own] of [
    ['budget', 'asked-again', 'Up to €120'],
    ['closure', 'seen', 'Laces'],
  ] as const) {
    const changed = ticket.locator(`li[data-question="${question}"] .changed`);
    await expect(changed).toContainText(`Changed by LT: ${en.reason[reason]}`);
    await expect(changed).toContainText(`The customer said: ${own}`);
  }

  const names = await pairNames(fitter, GLANCE);
  await showView(fitter, 'feet', counted);
  const pairs = ticket.locator('nav.parts [data-pair]');
  await expect(pairs).toHaveCount(3);
  const comfort = ['64', '81', '76'];
  let fetched: ReturnType<typeof sofar> | undefined;
  for (const [at, number] of comfort.entries()) {
    if (at > 0) await counted(pairs.nth(at));
    await counted(ticket.locator('label:has(input[name="try-on-box"])').first());
    fetched ??= sofar();
    await counted(ticket.locator('label:has(input[name="try-on-size"][value="right"])'));
    await counted(ticket.locator('label:has(input[name="try-on-heel"][value="holds"])'));
    await ticket.locator('input[name="try-on-comfort"]').fill(number);
    await fitter.keyboard.press('Enter');
    await expect(pairs.nth(at)).toContainText(tryOnWords('en').tried);
  }
  const favourites = [1, 2, 0];
  const ids = await pairs.evaluateAll((all) => all.map((each) => each.getAttribute('data-pair')));
  for (const at of favourites) await counted(ticket.locator(`.to-rank [data-shoe="${ids[at]}"]`));
  await expect(ticket.locator('.ranked li')).toHaveCount(3);
  await expect(ticket.locator('lw-ranking .same')).toContainText('feel about the same');

  await showView(fitter, 'decide', counted);
  const offered = ticket.locator('lw-decide fieldset').first().locator('label');
  const favourite = names[1] ?? '';
  await expect(offered.first()).toContainText(favourite);
  await counted(offered.first());
  const cards = [];
  for (const copy of ['customer', 'fitter']) {
    cards.push(await savedCard(fitter, () => counted(ticket.locator(`[data-card="${copy}-save"]`))));
  }
  const [theirs, ours] = cards.map(({ text }) => text);
  for (const text of [theirs, ours]) expect(text).toContain(plain(favourite));
  // What else was tried, what it felt like and what was changed is for the fitter alone.
  const own = [...names.filter((name) => name !== favourite), tryOnWords('en').comfort.name, '(LT:'].map(plain);
  expect(own.filter((each) => !ours?.includes(each))).toEqual([]);
  expect(own.filter((each) => theirs?.includes(each))).toEqual([]);
  for (const text of [theirs, ours]) expect(text).toMatch(/Lookinagainafterabout\d+weekswiththispair/);
  expect(ours).toContain(plain('Fitter'));
  expect(theirs).not.toContain(plain(benchWords('en').hold.none));
  await closeTicket(fitter, counted);
  await expect(fitter.locator('.ticket-row')).toHaveCount(0);

  report('bench', {
    lineUpShown,
    boxNamed,
    firstPairFetched: fetched,
    closed: sofar(),
    tapToLineUpMoved: await moves(),
  });
  for (const page of [customer, fitter]) await page.context().close();
});

test('with the customer’s yes the health answers travel too, and the other tablet is told the same', async ({
  browser,
}) => {
  test.setTimeout(120_000);
  const { answers } = storyNamed('nurse-on-tiles');
  const customer = await newTablet(browser);
  await customer.goto('');
  const shown = await toResult(customer, answers);
  await tap(customer.locator('[data-act="card"]'));
  await tap(customer.locator('[data-act="healthYes"]'));
  const address = await addressOnCard(customer);
  const fitter = await newTablet(browser);
  await openLink(fitter, address);
  await givePin(fitter);
  expect(await pairNames(fitter, GLANCE)).toEqual(shown);
  await expect(fitter.locator('lw-ticket')).not.toContainText(NOT_HANDED);
  await expect(fitter.locator('li[data-question="conditions"] strong')).toContainText('swell');
  for (const page of [customer, fitter]) await page.context().close();
});
