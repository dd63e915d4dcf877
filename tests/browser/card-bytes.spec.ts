import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from '@playwright/test';
import { build, type InlineConfig, preview } from 'vite';
import { readShop } from '../../src/card/read-shop.ts';
import { card } from '../../src/command-line/card.ts';
import { loadKnowledge, loadVisit } from '../../src/command-line/load.ts';
import type { CardOrder } from '../../src/worker/line-service.ts';

const DATE = '2026-11-25';
/** As the command line takes the list to be. */
const AS_OF = `${DATE}T08:00:00`;

// One worker takes both, so that the page is built once.
test.describe.configure({ mode: 'default' });

let site: { readonly url: string; readonly close: () => Promise<void> };
test.beforeAll(async () => {
  const outDir = mkdtempSync(join(tmpdir(), 'card-page-'));
  const settings: InlineConfig = {
    configFile: false,
    root: fileURLToPath(new URL('./card-page/', import.meta.url)),
    base: './',
    publicDir: false,
    logLevel: 'error',
    worker: { format: 'es' },
    build: { outDir, emptyOutDir: true, target: 'es2022', assetsInlineLimit: 0 },
  };
  await build(settings);
  const server = await preview({ ...settings, preview: { host: 'localhost', port: 0 } });
  const url = server.resolvedUrls?.local[0];
  if (!url) throw new Error('The page has no address');
  site = {
    url,
    close: async () => {
      await server.close();
      rmSync(outDir, { recursive: true, force: true });
    },
  };
});
test.afterAll(() => site.close());

for (const [story, format, copy] of [
  ['netball-old-sprain', 'a5', 'customer'],
  ['nurse-on-tiles', 'a4', 'fitter'],
] as const) {
  test(`the ${copy}'s card of ${story} is the same to the byte from the kiosk and from the command line`, async ({
    page,
  }) => {
    const path = `flows/fitting/stories/${story}.json`;
    const stock = readFileSync('demo/stock.csv', 'utf8');
    const logo = readFileSync('demo/logo.svg', 'utf8');
    const { value: shop } = readShop(readFileSync('demo/shop.json', 'utf8'), 'demo/shop.json', logo);
    if (!shop) throw new Error('The demo shop file reads');
    const folder = mkdtempSync(join(tmpdir(), 'card-bytes-'));
    const out = join(folder, 'card.pdf');
    const origin = 'https://kiosk.example';
    await card([
      path,
      ...['--stock', 'demo/stock.csv', '--out', out, '--format', format, '--copy', copy],
      ...['--date', DATE, '--ticket', 'maple 14', '--origin', origin, '--language', 'en'],
    ]);
    const fromCommandLine = readFileSync(out);
    rmSync(folder, { recursive: true });

    const { visit } = loadVisit(path, loadKnowledge());
    const order: CardOrder = { visit, shop, date: DATE, ticket: 'maple 14', origin, copy, format, language: 'en' };
    await page.goto(site.url);
    const fromKiosk = await page.evaluate(
      ([list, asOf, wanted]) =>
        (
          window as unknown as {
            cardInWorker: (stock: string, asOf: string, order: CardOrder) => Promise<string>;
          }
        ).cardInWorker(list, asOf, wanted),
      [stock, AS_OF, order] as const,
    );
    expect(Buffer.from(fromKiosk, 'base64').equals(fromCommandLine)).toBe(true);
  });
}
