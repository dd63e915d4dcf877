import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const STORIES = readdirSync('flows/fitting/stories').map((file) => `flows/fitting/stories/${file}`);

/** Writes a card for every story, and is killed after so many milliseconds, or ends by itself. */
const killedAfter = (ms: number, out: string): Promise<void> =>
  new Promise((done) => {
    const command = [
      '--import',
      'tsx',
      'src/command-line/fit.ts',
      'card',
      ...STORIES,
      '--stock',
      'demo/stock.csv',
      '--out',
      out,
    ];
    const child = spawn(process.execPath, command, { stdio: 'ignore' });
    const timer = setTimeout(() => child.kill('SIGKILL'), ms);
    child.on('exit', () => {
      clearTimeout(timer);
      done();
    });
  });

test('the writing of cards, killed at any moment, leaves whole cards or none', async () => {
  let cards = 0;
  await fc.assert(
    fc.asyncProperty(fc.integer({ min: 300, max: 6000 }), async (ms) => {
      const folder = mkdtempSync(join(tmpdir(), 'lacewing-kill-'));
      const out = join(folder, 'cards');
      await killedAfter(ms, out);
      const pdfs = existsSync(out) ? readdirSync(out).filter((file) => file.endsWith('.pdf')) : [];
      for (const file of pdfs) {
        const text = readFileSync(join(out, file), 'latin1');
        expect(text.startsWith('%PDF-') && text.trimEnd().endsWith('%%EOF'), file).toBe(true);
      }
      cards += pdfs.length;
      rmSync(folder, { recursive: true, force: true });
    }),
    { numRuns: Number(process.env['LACEWING_KILLS'] ?? 100) },
  );
  expect(cards).toBeGreaterThan(0);
});
