import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { statesOf } from '../../src/screens/states/states.ts';
import { flow } from './walk.ts';

export const SCREEN_STATES = statesOf(flow.sections.flatMap(({ questions }) => questions.map(({ id }) => id)));
export const LANGUAGES: readonly string[] = JSON.parse(
  readFileSync(new URL('../../flows/fitting/flow.json', import.meta.url), 'utf8'),
).languages;

/**
 * Opens one listed state and waits until it says it is ready. Where another stands already it gives way: loading the
 * page anew for each took most of the time of whoever looks at them all.
 */
export async function openState(page: Page, state: string, language = 'en'): Promise<void> {
  const asked = `?state=${state}&language=${language}`;
  const stands = await page.evaluate((search) => {
    if (document.documentElement.dataset['ready'] === undefined) return false;
    document.dispatchEvent(new CustomEvent('show-state', { detail: search }));
    return true;
  }, asked);
  if (!stands) await page.goto(`states/index.html${asked}`);
  await page.waitForFunction((id) => document.documentElement.dataset['ready'] === id, state);
  await page.evaluate(() => document.fonts.ready);
}

/** Changes the language where the page stands, as its own controls do: what is on the screen stays there. */
export async function speakState(page: Page, language: string): Promise<void> {
  await page.evaluate(async (spoken) => {
    const list = document.querySelector<HTMLSelectElement>('.bench-acts .speech');
    if (list) {
      list.value = spoken;
      list.dispatchEvent(new Event('change'));
    } else document.querySelector('lw-stub')?.dispatchEvent(new CustomEvent('language', { detail: spoken }));
  }, language);
  await page.waitForFunction((spoken) => document.documentElement.lang === spoken, language);
  // What is drawn anew is on the page two frames later.
  await page.evaluate(() => new Promise((seen) => requestAnimationFrame(() => requestAnimationFrame(seen))));
}
