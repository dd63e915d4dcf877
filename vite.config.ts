import { readdirSync, readFileSync } from 'node:fs';
import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';

const flowFolder = new URL('./flows/fitting/', import.meta.url);
const json = (name: string) => JSON.parse(readFileSync(new URL(name, flowFolder), 'utf8'));

/**
 * The tables' ids and groups alone: all that the questions need of them, and a tenth of what the rules load later.
 * Imported as `virtual:tables`.
 */
const tables = (): Plugin => ({
  name: 'lacewing-tables',
  resolveId: (id) => (id === 'virtual:tables' ? '\0virtual:tables' : undefined),
  load(id) {
    if (id !== '\0virtual:tables') return undefined;
    const rows = (file: string) =>
      (json(file) as readonly { id: string; group: string }[]).map(({ id: row, group }) => ({ id: row, group }));
    const all = {
      activities: rows('activities.json'),
      floors: rows('floors.json'),
      'shoe-kinds': rows('shoe-kinds.json'),
    };
    return `export const tables = ${JSON.stringify(all)};`;
  },
});

/** The languages with words, by their own names. Imported as `virtual:language-names`. */
const languageNames = (): Plugin => ({
  name: 'lacewing-language-names',
  resolveId: (id) => (id === 'virtual:language-names' ? '\0virtual:language-names' : undefined),
  load(id) {
    if (id !== '\0virtual:language-names') return undefined;
    const named = readdirSync(new URL('./flows/words/', import.meta.url)).map((language) => {
      const name = new Intl.DisplayNames([language], { type: 'language' }).of(language) ?? language;
      return [language, name.charAt(0).toLocaleUpperCase(language) + name.slice(1)];
    });
    return `export const languageNames = ${JSON.stringify(Object.fromEntries(named))};`;
  },
});

/**
 * The strict content policy, written into built pages only: the development server injects inline scripts.
 * Nothing inline, nothing evaluated, nothing from elsewhere; `blob:` frames hold the card being printed.
 */
const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
  "worker-src 'self'",
  'frame-src blob:',
  "form-action 'none'",
  "base-uri 'none'",
].join('; ');

const policy = (): Plugin => ({
  name: 'lacewing-policy',
  apply: 'build',
  transformIndexHtml: () => [
    { tag: 'meta', attrs: { 'http-equiv': 'Content-Security-Policy', content: POLICY }, injectTo: 'head-prepend' },
    { tag: 'meta', attrs: { name: 'referrer', content: 'no-referrer' }, injectTo: 'head-prepend' },
  ],
});

/** The demo shop travels with the build under `shop/`; a shop replaces those files, or loads its own stock on screen. */
const shopFiles = (): Plugin => {
  const files = ['shop.json', 'stock.csv', 'logo.svg'];
  const read = (file: string) => readFileSync(new URL(`./demo/${file}`, import.meta.url));
  return {
    name: 'lacewing-shop-files',
    configureServer(server) {
      server.middlewares.use((request, response, next) => {
        const file = files.find((name) => request.url?.split('?')[0] === `/shop/${name}`);
        if (!file) return next();
        response.end(read(file));
      });
    },
    generateBundle() {
      for (const file of files) this.emitFile({ type: 'asset', fileName: `shop/${file}`, source: read(file) });
    },
  };
};

const START = '/src/screens/main.ts';

/**
 * Everything that the first page imports, straight or through others, in one file: each file more is one more to wait
 * for. The page's own start stays out of it, or the page of all screen states would start a kiosk too.
 */
const inFirstLoad = (id: string, importersOf: (id: string) => readonly string[], seen = new Set<string>()): boolean => {
  if (seen.has(id)) return false;
  seen.add(id);
  return importersOf(id).some((importer) => importer.endsWith(START) || inFirstLoad(importer, importersOf, seen));
};

export default defineConfig({
  root: 'src/screens',
  base: './',
  publicDir: false,
  plugins: [tables(), languageNames(), policy(), shopFiles()],
  worker: { format: 'es', plugins: () => [tables()], rolldownOptions: { checks: { pluginTimings: false } } },
  build: {
    outDir: process.env['LACEWING_DIST'] ?? '../../dist',
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rolldownOptions: {
      checks: { pluginTimings: false },
      input: ['src/screens/index.html', 'src/screens/states/index.html'],
      output: {
        codeSplitting: {
          groups: [
            {
              name: (id, chunking) =>
                inFirstLoad(id, (each) => chunking.getModuleInfo(each)?.importers ?? []) ? 'first' : null,
            },
          ],
        },
      },
    },
  },
  test: {
    root: '.',
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/browser/**', 'tests/soak/**', 'node_modules/**'],
    testTimeout: 30_000,
    // Every core, in threads, and the modules loaded once: half of the time went on loading them anew for each file. No
    // test may therefore leave anything behind in what others import.
    pool: 'threads',
    maxWorkers: '100%',
    isolate: false,
  },
});
