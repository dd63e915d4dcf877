import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, preview } from 'vite';

/** The measuring page, built with the kiosk's own settings and content policy, on a port of its own. */
export async function openMeasureSite(): Promise<{ readonly url: string; readonly close: () => Promise<void> }> {
  const outDir = mkdtempSync(join(tmpdir(), 'measure-page-'));
  const settings = {
    configFile: fileURLToPath(new URL('../../vite.config.ts', import.meta.url)),
    root: fileURLToPath(new URL('./measure-page/', import.meta.url)),
    logLevel: 'error' as const,
    build: { outDir, emptyOutDir: true },
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
