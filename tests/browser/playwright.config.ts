import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';
import { BROWSER_ARGUMENTS, findBrowser } from './find-browser.ts';

/** Where the kiosk is served, and where reports go. Several may run this suite at once, each in a place of their own. */
const PORT = Number(process.env['LACEWING_PORT'] ?? 4329);
const RESULTS = process.env['LACEWING_RESULTS'] ?? fileURLToPath(new URL('../../test-results', import.meta.url));

export default defineConfig({
  testDir: '.',
  testMatch: '*.spec.ts',
  // A folder of its own: it is emptied before each run, and other parts of the checks leave reports beside it.
  outputDir: join(RESULTS, 'browser'),
  workers: 2,
  fullyParallel: true,
  timeout: 60_000,
  retries: 0,
  reporter: [['list'], ['json', { outputFile: join(RESULTS, 'browser.json') }]],
  use: {
    baseURL: `http://localhost:${PORT}/`,
    viewport: { width: 1280, height: 800 },
    hasTouch: true,
    locale: 'en-GB',
    launchOptions: { executablePath: findBrowser(), args: BROWSER_ARGUMENTS },
    trace: 'off',
  },
  // The built kiosk, served as a shop would serve it. `LACEWING_DIST` says where the build is, if not in `dist`.
  webServer: {
    command: `npx vite preview --host localhost --port ${PORT} --strictPort`,
    cwd: '../..',
    url: `http://localhost:${PORT}/`,
    reuseExistingServer: false,
  },
});
