import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { statesOf } from '../../src/screens/states/states.ts';
import { flow } from './walk.ts';

export const SCREEN_STATES = statesOf(flow.sections.flatMap(({ questions }) => questions.map(({ id }) => id)));
export const LANGUAGES: readonly string[] = JSON.parse(
  readFileSync(new URL('../../flows/fitting/flow.json', import.meta.url), 'utf8'),
).languages;

/** Opens one listed state and waits until it says it is ready. */
export async function openState(page: Page, state: string, language = 'en'): Promise<void> {
  await page.goto(`states/index.html?state=${state}&language=${language}`);
  await page.waitForFunction((id) => document.documentElement.dataset['ready'] === id, state);
  await page.evaluate(() => document.fonts.ready);
}
