import { defineConfig } from '@playwright/test';
import { BROWSER_ARGUMENTS, findBrowser } from './find-browser.ts';

const PORT = 4329;

export default defineConfig({
  testDir: '.',
  testMatch: '*.spec.ts',
  outputDir: '../../test-results',
  workers: 2,
  fullyParallel: true,
  timeout: 60_000,
  retries: 0,
  reporter: [['list'], ['json', { outputFile: '../../test-results/browser.json' }]],
  use: {
    baseURL: `http://localhost:${PORT}/`,
    viewport: { width: 1280, height: 800 },
    hasTouch: true,
    locale: 'en-GB',
    launchOptions: { executablePath: findBrowser(), args: BROWSER_ARGUMENTS },
    trace: 'off',
  },
  // The built kiosk, served as a shop would serve it.
  webServer: {
    command: `npx vite preview --host localhost --port ${PORT} --strictPort`,
    cwd: '../..',
    url: `http://localhost:${PORT}/`,
    reuseExistingServer: false,
  },
});
