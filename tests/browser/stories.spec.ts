import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, type Page, test } from '@playwright/test';

import type { Answers } from '../../src/flow/answers.ts';
import { holds } from '../../src/flow/holds.ts';
import { plain, savedCard } from './pdf-text.ts';
import { flow, openCard, storyNamed, tap, walkInterview } from './walk.ts';

// One worker takes this file from top to bottom, so that one table of all walks is written at its end.
test.describe.configure({ mode: 'default' });
test.use({ reducedMotion: 'reduce' });

const SHOP = 'The Invented Shoe Yard';
const walks: { name: string; screens: number; taps: number }[] = [];

/** The most screens the flow allows a visitor with these answers. */
function allowed(name: string, answers: Answers): number {
  const { longest, shortWays, typical } = flow.bounds;
  const short = shortWays.filter(({ when }) => holds(when, answers)).map(({ screens }) => screens);
  return Math.min(longest, ...short, ...(typical.story === name ? [typical.screens] : []));
}

const act = (page: Page, name: string) => page.locator(`[data-act="${name}"]`);

/** By touch alone, from the welcome to the result; screens and taps are written down. */
async function visit(page: Page, name: string): Promise<{ ticket: string }> {
  const { answers } = storyNamed(name);
  await page.goto('');
  const { screens, taps } = await walkInterview(page, answers);
  const most = allowed(name, answers);
  expect(screens.length, `${name} meets at most ${most} questions`).toBeLessThanOrEqual(most);
  walks.push({ name, screens: screens.length, taps: taps + 1 });
  const ticket = ((await page.locator('.ticket strong').textContent()) ?? '').trim();
  await tap(page.locator('lw-review ~ .foot .main'));
  await page.locator('lw-result').waitFor();
  return { ticket };
}

/** The result as it stands on the screen. */
async function shown(page: Page) {
  const texts = (selector: string) => page.locator(`lw-result ${selector}`).allInnerTexts();
  return {
    title: (await page.locator('lw-result h1').textContent()) ?? '',
    pairs: (await texts('.pair h3')).map((name) => name.replace(/^[A-Z]\s+/, '')),
    shelves: await texts('.pair:first-child .shelf'),
  };
}

test.afterAll(() => {
  const file = join(dirname(test.info().project.outputDir), 'walks.json');
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, `${JSON.stringify(walks, undefined, 2)}\n`);
});

for (const name of ['nurse-on-tiles', 'same-again', 'just-the-size', 'trail-and-gym']) {
  test(`${name}: a customer taps from the welcome to a card that says what the screen said`, async ({ page }) => {
    const { ticket } = await visit(page, name);
    const { title, pairs, shelves } = await shown(page);
    await openCard(page);
    const card = await savedCard(page, () => tap(act(page, 'save')));
    expect(card.name).toBe(`${ticket.replace(' ', '-')}.pdf`);
    for (const said of [SHOP, ticket, title, pairs[0] ?? 'no pair', ...shelves])
      expect(card.text).toContain(plain(said));
    expect(pairs.length).toBeGreaterThan(0);
    expect(shelves.length).toBeGreaterThan(0);
  });
}

test('a walker with numb toes gets a card that sells nothing and says whom to see', async ({ page }) => {
  const { ticket } = await visit(page, 'walker-diabetes-numb-toes');
  const { title, pairs } = await shown(page);
  expect(pairs).toEqual([]);
  await openCard(page);
  const card = await savedCard(page, () => tap(act(page, 'save')));
  for (const said of [SHOP, ticket, title, 'We will not sell you a pair today.'])
    expect(card.text).toContain(plain(said));
});

test('a netballer who says no to health notes gets a card that holds none of them', async ({ page }) => {
  await visit(page, 'netball-old-sprain');
  const { pairs, shelves } = await shown(page);
  const minded = await page.locator('lw-result .mind li').allInnerTexts();
  await tap(act(page, 'card'));
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Print your health notes too?');
  await tap(act(page, 'healthNo'));
  const without = await savedCard(page, () => tap(act(page, 'save')));
  for (const said of [SHOP, pairs[0] ?? 'no pair', ...shelves]) expect(without.text).toContain(plain(said));
  await tap(act(page, 'back'));
  await tap(act(page, 'card'));
  await tap(act(page, 'healthYes'));
  const withNotes = await savedCard(page, () => tap(act(page, 'save')));
  // Her ankle gives way: the screen tells her so, and the paper only after a yes.
  const notes = minded.map(plain).filter((note) => withNotes.text.includes(note) && !without.text.includes(note));
  expect(notes.join()).toContain(plain('An ankle that gives way'));
  for (const told of ['gives way', 'a brace and balance practice', 'your health notes']) {
    expect(withNotes.text).toContain(plain(told));
    expect(without.text).not.toContain(plain(told));
  }
});
