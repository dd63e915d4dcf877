import { readFileSync } from 'node:fs';
import { expect, type Page } from '@playwright/test';
import type { Answers } from '../../src/flow/answers.ts';
import { type Act, tap, walkInterview } from './walk.ts';

const file = (language: string, area: string) =>
  JSON.parse(readFileSync(new URL(`../../flows/words/${language}/${area}.json`, import.meta.url), 'utf8'));
export const benchWords = (language: string) => file(language, 'bench').bench;
export const en = benchWords('en');
export const tryOnWords = (language: string) => file(language, 'try-on')['try-on'];

/** The shop's PIN in every check; typed with a space, as people do. */
export const PIN = '24 68';

/** The PIN screen filled in and sent, whatever comes of it. */
export async function givePin(page: Page, pin = PIN, initials = 'LT', act: Act = tap): Promise<void> {
  const again = page.locator('lw-pin input[name="again"]');
  await page.locator('lw-pin input[name="pin"]').waitFor();
  await act(page.locator('lw-pin input[name="pin"]'));
  await page.locator('lw-pin input[name="pin"]').fill(pin);
  if ((await again.count()) > 0) {
    await act(again);
    await again.fill(pin);
  }
  await act(page.locator('lw-pin input[name="initials"]'));
  await page.locator('lw-pin input[name="initials"]').fill(initials);
  await act(page.locator('lw-pin button[type="submit"]'));
}

/** From the welcome to today's tickets; the first to come sets the PIN. */
export async function openBench(page: Page, initials = 'LT'): Promise<void> {
  await tap(page.locator('[data-act="staff"]'));
  await givePin(page, PIN, initials);
  await page.locator('lw-tickets h1').waitFor();
}

/** Changes an answer of one tap, or of one for its group and one for itself, and says why in one more. */
export async function override(
  page: Page,
  question: string,
  options: string | readonly string[],
  reason: string,
  act: Act = tap,
): Promise<void> {
  await act(page.locator(`li[data-question="${question}"] [data-edit]`));
  for (const name of [options].flat()) {
    await act(page.locator('lw-edit-answer').getByRole('button', { name, exact: true }));
  }
  await act(page.locator(`lw-edit-answer [data-reason="${reason}"]`));
  await page.locator('lw-edit-answer').waitFor({ state: 'detached' });
}

/** The pairs named on a screen, in order, without their letters. */
export async function pairNames(page: Page, heads: string): Promise<readonly string[]> {
  await page.locator(heads).first().waitFor();
  const texts = await page.locator(heads).allTextContents();
  return texts.map((text) =>
    text
      .replace(/\s+/g, ' ')
      .trim()
      .replace(/^\p{Lu} /u, ''),
  );
}
/** On the customer's result; at the top of an open ticket; in its line-up, which names them itself. */
export const RESULT = 'lw-result .pair h3';
export const GLANCE = 'lw-ticket .glance ol li .name';
export const LINE_UP = 'lw-ticket .line-up .pair h3';

/** Answers the interview to its result; returns the pairs shown. */
export async function toResult(page: Page, answers: Answers): Promise<readonly string[]> {
  await walkInterview(page, answers);
  await tap(page.locator('lw-review ~ .foot .main'));
  return pairNames(page, RESULT);
}

/** From the result on: handed to the fitter under the ticket returned, and the tablet free again. */
export async function handOver(page: Page): Promise<string> {
  for (const act of ['hand', 'handYes']) await tap(page.locator(`[data-act="${act}"]`));
  const ticket = (await page.locator('.stub .ticket strong').textContent()) ?? '';
  await tap(page.locator('[data-act="done"]'));
  await page.locator('lw-welcome').waitFor();
  return ticket.replace(/\s+/g, ' ').trim();
}

export async function showView(
  page: Page,
  view: 'profile' | 'measure' | 'line-up' | 'feet' | 'decide',
  act: Act = tap,
): Promise<void> {
  await act(page.locator(`lw-ticket .views [data-view="${view}"]`));
  await page.locator(`lw-ticket .view[data-view="${view}"]`).waitFor();
}

/** Closes the ticket in front, and finds it gone. */
export async function closeTicket(page: Page, act: Act = tap, said: string = en.note.closed): Promise<void> {
  await act(page.locator('[data-act="close"]'));
  await act(page.locator('[data-act="close-yes"]'));
  await expect(page.locator('lw-tickets')).toContainText(said);
}
