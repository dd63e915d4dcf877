import { defineConfig } from '@playwright/test';
import browser from '../browser/playwright.config.ts';

/** The long ones in a browser: one at a time, so that what is measured is not another's work. */
export default defineConfig({ ...browser, testDir: '.', workers: 1, timeout: 300_000 });
