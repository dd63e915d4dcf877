import type { Browser, Page } from '@playwright/test';
import { storyNamed, walkInterview } from '../browser/walk.ts';
import { finger } from './finger.ts';
import type { Site } from './sites.ts';
import { freshPage, type Painted, paintedOn, quantile } from './watch.ts';

export interface Pair {
  readonly bare: number;
  readonly kiosk: number;
}

/** Milliseconds from asking for the page to the first question painted: the middle of several, turn and turn about. */
export async function coldStart(
  browser: Browser,
  bare: Site,
  kiosk: Site,
  slowed: number,
  times: number,
): Promise<Pair> {
  const once = async (site: Site): Promise<number> => {
    const { page, context } = await freshPage(browser, slowed, true);
    await page.goto(site.url);
    await page.waitForFunction(() => (window as unknown as { painted: readonly unknown[] }).painted.length > 0);
    const [first] = await paintedOn(page);
    await context.close();
    return first?.at ?? Number.NaN;
  };
  const taken: { bare: number[]; kiosk: number[] } = { bare: [], kiosk: [] };
  for (let time = 0; time < times; time += 1) {
    taken.bare.push(await once(bare));
    taken.kiosk.push(await once(kiosk));
  }
  return { bare: quantile(taken.bare, 0.5), kiosk: quantile(taken.kiosk, 0.5) };
}

export interface Taps extends Pair {
  /** Half of them are faster on the kiosk. */
  readonly middle: number;
  /** How many next questions were measured on the kiosk. */
  readonly count: number;
  /** The slowest, by question. */
  readonly slowest: readonly { readonly question: string; readonly ms: number }[];
}

/** Milliseconds from a finger's tap to the next question painted: 95 of 100 are faster. */
export async function tapToNext(
  browser: Browser,
  bare: Site,
  kiosk: Site,
  slowed: number,
  times: number,
): Promise<Taps> {
  const walkBare = async (page: Page) => {
    await finger(page.getByRole('button', { name: 'Start', exact: true }));
    for (let at = 0; at < 26; at += 1) {
      await page.locator(`[data-question="${at}"]`).waitFor();
      await finger(page.locator('.choice').nth(at % 6));
    }
  };
  const walkKiosk = async (page: Page) =>
    void (await walkInterview(page, storyNamed('trail-and-gym').answers, 'en', finger));
  const floor: Painted[] = [];
  const own: Painted[] = [];
  for (let time = 0; time < times; time += 1) {
    floor.push(...(await walked(browser, bare, slowed, walkBare)));
    own.push(...(await walked(browser, kiosk, slowed, walkKiosk)));
  }
  const ms = (list: readonly Painted[]) =>
    list.flatMap(({ at, tapped }) => (tapped === undefined ? [] : [at - tapped]));
  const slowest = own
    .map(({ question, at, tapped }) => ({ question, ms: Math.round(at - (tapped ?? at)) }))
    .sort((a, b) => b.ms - a.ms)
    .slice(0, 3);
  return {
    bare: quantile(ms(floor), 0.95),
    kiosk: quantile(ms(own), 0.95),
    middle: quantile(ms(own), 0.5),
    count: own.length,
    slowest,
  };
}

async function walked(
  browser: Browser,
  site: Site,
  slowed: number,
  walk: (page: Page) => Promise<void>,
): Promise<readonly Painted[]> {
  const { page, context } = await freshPage(browser, slowed, false);
  await page.goto(site.url);
  await walk(page);
  const painted = await paintedOn(page);
  await context.close();
  return painted;
}
