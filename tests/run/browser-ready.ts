/** Finds or installs a browser before the checks begin, so that a missing one is said at once. */
import { findBrowser } from '../browser/find-browser.ts';

process.stdout.write(`Browser: ${findBrowser()}\n`);
