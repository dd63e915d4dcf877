import { readFileSync } from 'node:fs';
import type { Browser } from '@playwright/test';
import { openCard, storyNamed, tap, walkInterview } from '../browser/walk.ts';
import type { Site } from './sites.ts';
import { freshPage } from './watch.ts';

export interface CardPdf {
  /** Milliseconds from the tap on "save" to the file, the first time and once loaded. */
  readonly first: number;
  readonly again: number;
  readonly bytes: number;
}

/** A customer saves the card, goes back to the pairs, and saves it anew. */
export async function cardPdf(browser: Browser, site: Site): Promise<CardPdf> {
  const { page, context } = await freshPage(browser, 1, false);
  await page.goto(site.url);
  await walkInterview(page, storyNamed('same-again').answers);
  await tap(page.locator('lw-review ~ .foot .main'));
  const button = page.locator('[data-act="save"]');
  await openCard(page);
  await button.waitFor();
  const saved = async () => {
    // Taken in the page: the tap's own time, and the time at which the file is handed over.
    await page.evaluate(() => {
      const marks = { tapped: 0, given: 0 };
      Object.assign(window, { marks });
      addEventListener(
        'click',
        (event) => {
          if (event.target instanceof HTMLAnchorElement) marks.given = performance.now();
          else marks.tapped = event.timeStamp;
        },
        true,
      );
      const click = HTMLAnchorElement.prototype.click;
      HTMLAnchorElement.prototype.click = function given(this: HTMLAnchorElement) {
        marks.given = performance.now();
        click.call(this);
      };
    });
    const download = page.waitForEvent('download');
    await tap(button);
    const path = await (await download).path();
    const { tapped, given } = await page.evaluate(
      () => (window as unknown as { marks: { tapped: number; given: number } }).marks,
    );
    return { ms: given - tapped, bytes: readFileSync(path).length };
  };
  const first = await saved();
  // A card left and opened again is drawn again; the same one would be handed over as it was kept.
  await tap(page.locator('[data-act="back"]'));
  await openCard(page);
  const again = await saved();
  await context.close();
  return { first: first.ms, again: again.ms, bytes: again.bytes };
}
