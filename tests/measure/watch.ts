import type { Browser, BrowserContext, Page } from '@playwright/test';

/** When a question was painted, and the tap that led to it; milliseconds since the page was asked for. */
export interface Painted {
  readonly question: string;
  readonly at: number;
  readonly tapped?: number;
}

/**
 * Runs in the page. A question counts as painted in the task after the frame that drew it. With `start`, the welcome
 * is passed as soon as it stands there, so that a cold start is the machine's time and not the tester's.
 */
function watch(start: boolean): void {
  const painted: Painted[] = [];
  Object.assign(window, { painted });
  let last: string | undefined;
  let tapped: number | undefined;
  let started = false;
  addEventListener(
    'click',
    (event) => {
      tapped = event.timeStamp;
    },
    true,
  );
  const look = (): void => {
    if (start && !started) {
      const button = [...document.querySelectorAll('button')].find((each) => each.textContent?.trim() === 'Start');
      started = button !== undefined;
      button?.click();
    }
    const question = document.querySelector<HTMLElement>('[data-question]')?.dataset['question'];
    if (question === last) return;
    last = question;
    if (question === undefined) return;
    const from = tapped;
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () =>
        painted.push({ question, at: performance.now(), ...(from === undefined ? {} : { tapped: from }) });
      port2.postMessage(0);
    });
  };
  new MutationObserver(look).observe(document, {
    subtree: true,
    childList: true,
    attributes: true,
    attributeFilter: ['data-question'],
  });
}

/** A page as on a tablet that never saw the kiosk, its processor slowed down so many times. */
export async function freshPage(
  browser: Browser,
  slowed: number,
  start: boolean,
): Promise<{ readonly page: Page; readonly context: BrowserContext }> {
  const context = await browser.newContext({
    viewport: { width: 1280, height: 800 },
    hasTouch: true,
    locale: 'en-GB',
    acceptDownloads: true,
  });
  const page = await context.newPage();
  // The transpiler wraps named functions in a call that a page does not know.
  await page.addInitScript('globalThis.__name ??= (it) => it');
  await page.addInitScript(watch, start);
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowed });
  return { page, context };
}

export const paintedOn = (page: Page): Promise<readonly Painted[]> =>
  page.evaluate(() => (window as unknown as { painted: readonly Painted[] }).painted);

/** The value below which so much of them lies, by nearest rank. */
export function quantile(values: readonly number[], part: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(part * sorted.length) - 1)] ?? Number.NaN;
}
