/**
 * Pictures of every screen state, every language, both ways up, into `samples/screens`, and contact sheets of them.
 * `npm run screens`; needs a build. `--language de`, `--state bench` (how its name begins) and `--size tall` narrow it.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { chromium } from '@playwright/test';
import { preview } from 'vite';
import { BROWSER_ARGUMENTS, findBrowser } from './find-browser.ts';
import { LANGUAGES, openState, SCREEN_STATES } from './screens.ts';

const { values } = parseArgs({
  options: {
    language: { type: 'string' },
    state: { type: 'string', default: '' },
    size: { type: 'string' },
    out: { type: 'string' },
  },
});
const out = values.out ?? 'samples/screens';
const SIZES = { wide: { width: 1280, height: 800 }, tall: { width: 800, height: 1280 } };
const PORT = Number(process.env['LACEWING_PORT'] ?? 4331);
/** Pictures side by side on a sheet, how many to a sheet, and how wide each is shown, CSS pixels. */
const ACROSS = 6;
const TOGETHER = 18;
const SHOWN = 320;

mkdirSync(out, { recursive: true });
const server = await preview({ preview: { port: PORT, host: 'localhost' } });
const browser = await chromium.launch({ executablePath: findBrowser(), args: BROWSER_ARGUMENTS });
const states = SCREEN_STATES.filter(({ id }) => id.startsWith(values.state));
for (const language of values.language ? [values.language] : LANGUAGES) {
  for (const [name, viewport] of Object.entries(SIZES).filter(([id]) => !values.size || id === values.size)) {
    const page = await browser.newPage({
      viewport,
      baseURL: `http://localhost:${PORT}/`,
      hasTouch: true,
      reducedMotion: 'reduce',
    });
    const shown: string[] = [];
    for (const { id } of states) {
      await openState(page, id, language).catch((reason: unknown) => {
        throw new Error(`${id} (${language}): ${String(reason)}`);
      });
      const file = `${id}-${language}-${name}.png`;
      await page.screenshot({ path: `${out}/${file}`, fullPage: true });
      shown.push(
        `<figure style="margin:0"><img src="${file}" width="${SHOWN}"><figcaption>${id}</figcaption></figure>`,
      );
    }
    await page.setViewportSize({ width: ACROSS * (SHOWN + 10) + 16, height: 600 });
    for (let from = 0; from < shown.length; from += TOGETHER) {
      const sheet = `${out}/sheet-${language}-${name}-${from / TOGETHER + 1}`;
      writeFileSync(
        `${sheet}.html`,
        `<!doctype html><meta charset="utf-8"><title>${language} ${name}</title><body style="margin:8px;display:grid;grid-template-columns:repeat(${ACROSS},${SHOWN}px);gap:10px;font:13px sans-serif;background:#bbb">${shown.slice(from, from + TOGETHER).join('')}`,
      );
      await page.goto(pathToFileURL(`${sheet}.html`).href);
      await page.screenshot({ path: `${sheet}.png`, fullPage: true });
      process.stdout.write(`${sheet}.png\n`);
    }
    await page.close();
  }
}
await browser.close();
server.httpServer.close();
process.exit(0);
