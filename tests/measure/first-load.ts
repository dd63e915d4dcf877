import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync } from 'node:zlib';
import type { Browser } from '@playwright/test';
import type { Site } from './sites.ts';
import { freshPage } from './watch.ts';

const KINDS = ['page', 'code', 'style', 'words', 'flow', 'fonts', 'drawings', 'other'] as const;
export type Kind = (typeof KINDS)[number];
/** Told, but not counted against the budget, which is for JS, CSS, flow and words. */
export const APART: readonly Kind[] = ['page', 'fonts', 'drawings', 'other'];

function kindOf(file: string): Kind {
  if (/\.(woff2?|ttf)$/.test(file)) return 'fonts';
  if (/\.svg$/.test(file)) return 'drawings';
  if (/\.css$/.test(file)) return 'style';
  if (/(^|\/)(interview|words)[.-][^/]*\.js$/.test(file)) return 'words';
  if (/\.js$/.test(file)) return 'code';
  return file === '' || /\.html$/.test(file) ? 'page' : 'other';
}

export interface FirstLoad {
  /** Bytes in brotli, by kind. The flow travels inside the code and is told apart by its own size. */
  readonly bytes: Readonly<Record<Kind, number>>;
  /** JS, CSS, flow and words together. */
  readonly counted: number;
  readonly files: readonly string[];
}

/**
 * What the first question needs: all that the page itself names, and of what else is asked for before the welcome
 * stands there, each file without which no question comes. The rest only begins early, while the customer reads.
 */
export async function firstLoad(browser: Browser, site: Site): Promise<FirstLoad> {
  const asked = await askedAtFirst(browser, site);
  const page = readFileSync(join(site.folder, 'index.html'), 'utf8');
  const files: string[] = [];
  for (const file of asked) {
    const named = file === '' || APART.includes(kindOf(file)) || page.includes(`"./${file}"`);
    if (named || !(await comesWithout(browser, site, file))) files.push(file);
  }
  const bytes = Object.fromEntries(KINDS.map((kind) => [kind, 0])) as Record<Kind, number>;
  for (const file of files) bytes[kindOf(file)] += brotli(readFileSync(join(site.folder, file || 'index.html')));
  const flow = brotli(Buffer.from(JSON.stringify(JSON.parse(readFileSync('flows/fitting/flow.json', 'utf8')))));
  bytes.flow = flow;
  bytes.code -= flow;
  const counted = KINDS.filter((kind) => !APART.includes(kind)).reduce((sum, kind) => sum + bytes[kind], 0);
  return { bytes, counted, files };
}

const brotli = (content: Uint8Array): number => brotliCompressSync(content).length;

async function askedAtFirst(browser: Browser, site: Site): Promise<readonly string[]> {
  const asked = new Set<string>();
  const { page, context } = await freshPage(browser, 1, false);
  const note = (request: { url(): string }) => void (request.url().startsWith('http') && asked.add(fileOf(request)));
  page.on('request', note);
  await page.goto(site.url);
  await page.getByRole('button', { name: 'Start', exact: true }).waitFor();
  page.off('request', note);
  await context.close();
  return [...asked].sort();
}

async function comesWithout(browser: Browser, site: Site, file: string): Promise<boolean> {
  const { page, context } = await freshPage(browser, 1, true);
  await page.route('**/*', (route) => (fileOf(route.request()) === file ? route.abort() : route.continue()));
  await page.goto(site.url);
  const question = page.locator('[data-question]').waitFor({ timeout: LONG_ENOUGH });
  const comes = await question.then(
    () => true,
    () => false,
  );
  await context.close();
  return comes;
}

/** Milliseconds after which a first question is not coming any more. */
const LONG_ENOUGH = 4000;
const fileOf = (request: { url(): string }): string => decodeURIComponent(new URL(request.url()).pathname.slice(1));
