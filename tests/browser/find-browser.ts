import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chromium } from '@playwright/test';

/**
 * Where a Chromium usually stands. `CHROMIUM` in the environment goes first; then the build without a window, which
 * draws pages with the same engine and takes half the time, since it has no frame, menus and bubbles to keep ready.
 */
const USUAL = [
  process.env['CHROMIUM'],
  '/usr/bin/chromium-headless-shell',
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
];

const asRoot = process.getuid?.() === 0;
const present = (): string | undefined =>
  [...USUAL, chromium.executablePath()].find((path) => path !== undefined && path !== '' && existsSync(path));

/**
 * A browser for the screens' tests: one that is here, else Debian's package (as root), else Playwright's own download.
 *
 * @throws with what to do, when none of the three works
 */
export function findBrowser(): string {
  const found = present();
  if (found) return found;
  const quiet = { stdio: 'inherit' } as const;
  if (asRoot && existsSync('/usr/bin/apt-get')) {
    try {
      execFileSync('apt-get', ['update', '-qq'], quiet);
      execFileSync('apt-get', ['install', '-y', '-qq', 'chromium-headless-shell'], quiet);
    } catch {}
  }
  if (!present()) {
    try {
      execFileSync('npx', ['playwright', 'install', 'chromium'], quiet);
    } catch {}
  }
  const installed = present();
  if (installed) return installed;
  throw new Error(
    'No Chromium was found and none could be installed. Install one (Debian: apt-get install chromium-headless-shell), or set CHROMIUM to its path.',
  );
}

/** What a browser run as root, or in a closed network, needs to be told. */
export const BROWSER_ARGUMENTS = [
  ...(asRoot ? ['--no-sandbox'] : []),
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
];
