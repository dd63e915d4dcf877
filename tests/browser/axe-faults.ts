import { expect, type Page } from '@playwright/test';
import axe from 'axe-core';

/** The WCAG 2.2 rules up to AA, by the names axe gives them. */
export const WCAG: readonly string[] = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/**
 * What axe holds against the page as it stands, as `rule: where`. It is put into a page once and asked there each time:
 * bringing it along for every look took longer than looking. A card's frame runs no scripts, axe's neither, and is
 * looked at as a page of its own.
 */
export async function axeFaults(page: Page, tags = WCAG): Promise<readonly string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe.source);
  return page.evaluate(async (values) => {
    const here = (window as unknown as { axe: typeof axe }).axe;
    const { violations } = await here.run(
      { exclude: ['iframe'] },
      { resultTypes: ['violations'], runOnly: { type: 'tag', values: [...values] }, iframes: false },
    );
    return violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`));
  }, tags);
}

/** Axe holds nothing against the page as it stands. */
export async function axeFindsNothing(page: Page, tags = WCAG): Promise<void> {
  expect(await axeFaults(page, tags)).toEqual([]);
}
