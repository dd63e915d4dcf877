import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, type InlineConfig, preview } from 'vite';

export interface Site {
  readonly url: string;
  /** Where the built files are. */
  readonly folder: string;
  readonly close: () => Promise<void>;
}

/** Builds a page into a folder of its own and serves it, as it would be served in a shop. */
async function opened(settings: InlineConfig): Promise<Site> {
  const folder = mkdtempSync(join(tmpdir(), 'lacewing-measure-'));
  const all = {
    ...settings,
    logLevel: 'silent',
    build: { ...settings.build, outDir: folder, emptyOutDir: true },
  } as const;
  await build(all);
  const server = await preview({ ...all, preview: { host: 'localhost', port: 0 } });
  const url = server.resolvedUrls?.local[0];
  if (!url) throw new Error('The page has no address');
  const close = async () => {
    await server.close();
    rmSync(folder, { recursive: true, force: true });
  };
  return { url, folder, close };
}

export const openKiosk = (): Promise<Site> =>
  opened({ configFile: fileURLToPath(new URL('../../vite.config.ts', import.meta.url)) });

/** The floor: one bare Lit element that shows one list of buttons after another. */
export const openBare = (): Promise<Site> =>
  opened({
    configFile: false,
    root: fileURLToPath(new URL('./bare/', import.meta.url)),
    base: './',
    publicDir: false,
    build: { target: 'es2022', modulePreload: { polyfill: false } },
  });
