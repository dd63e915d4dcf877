import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, type InlineConfig, type Plugin, preview } from 'vite';
import kiosk from '../../vite.config.ts';

/** The measuring page, built under the kiosk's own content policy, on a port of its own. */
export async function openMeasureSite(): Promise<{ readonly url: string; readonly close: () => Promise<void> }> {
  const outDir = mkdtempSync(join(tmpdir(), 'measure-page-'));
  const plugins = (kiosk.plugins as readonly Plugin[]).filter(({ name }) => name === 'lacewing-policy');
  if (plugins.length !== 1) throw new Error('The kiosk has no content policy to build under');
  const settings: InlineConfig = {
    configFile: false,
    root: fileURLToPath(new URL('./measure-page/', import.meta.url)),
    base: './',
    publicDir: false,
    logLevel: 'error',
    plugins,
    build: { outDir, emptyOutDir: true, target: 'es2022', assetsInlineLimit: 0, modulePreload: { polyfill: false } },
  };
  await build(settings);
  const server = await preview({ ...settings, preview: { host: 'localhost', port: 0 } });
  const url = server.resolvedUrls?.local[0];
  if (!url) throw new Error('The measuring page has no address');
  return {
    url,
    close: async () => {
      await server.close();
      rmSync(outDir, { recursive: true, force: true });
    },
  };
}
