/**
 * Pictures of every screen state, every language, both ways up, into `samples/screens`, and contact sheets of them.
 * `npm run screens`; needs a build. `--language de` and `--state result-pairs` narrow it.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { chromium } from '@playwright/test';
import { preview } from 'vite';
import { BROWSER_ARGUMENTS, findBrowser } from './find-browser.ts';
import { LANGUAGES, openState, SCREEN_STATES } from './screens.ts';

const { values } = parseArgs({
  options: { language: { type: 'string' }, state: { type: 'string' }, out: { type: 'string' } },
});
const out = values.out ?? 'samples/screens';
const SIZES = { wide: { width: 1280, height: 800 }, tall: { width: 800, height: 1280 } };
/** Pictures side by side on a sheet, and how wide each is shown, CSS pixels. */
const ACROSS = 6;
const SHOWN = 320;

mkdirSync(out, { recursive: true });
const server = await preview({ preview: { port: 4331, host: 'localhost' } });
const browser = await chromium.launch({ executablePath: findBrowser(), args: BROWSER_ARGUMENTS });
const states = SCREEN_STATES.filter(({ id }) => !values.state || id === values.state);
for (const language of values.language ? [values.language] : LANGUAGES) {
  for (const [name, viewport] of Object.entries(SIZES)) {
    const page = await browser.newPage({ viewport, baseURL: 'http://localhost:4331/', hasTouch: true });
    const shown: string[] = [];
    for (const { id } of states) {
      await openState(page, id, language).catch((reason: unknown) => {
        throw new Error(`${id} (${language}): ${String(reason)}`);
      });
      const file = `${id}-${language}-${name}.png`;
      await page.screenshot({ path: `${out}/${file}`, fullPage: true });
      shown.push(`<figure><img src="${file}" width="${SHOWN}"><figcaption>${id}</figcaption></figure>`);
    }
    const sheet = `${out}/sheet-${language}-${name}.html`;
    writeFileSync(
      sheet,
      `<!doctype html><meta charset="utf-8"><title>${language} ${name}</title><body style="margin:8px;display:grid;grid-template-columns:repeat(${ACROSS},${SHOWN}px);gap:10px;font:13px sans-serif;background:#bbb">${shown.join('')}`,
    );
    await page.setViewportSize({ width: ACROSS * (SHOWN + 10) + 16, height: 1000 });
    await page.goto(pathToFileURL(sheet).href);
    await page.screenshot({ path: `${out}/sheet-${language}-${name}.png`, fullPage: true });
    await page.close();
    process.stdout.write(`${out}/sheet-${language}-${name}.png\n`);
  }
}
await browser.close();
server.httpServer.close();
process.exit(0);
