import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { ownFolder } from './running.ts';

const own = ownFolder();
let started: ChildProcess | undefined;

afterAll(async () => {
  if (started?.pid !== undefined && started.exitCode === null) {
    const ended = once(started, 'exit');
    // npm and what it started, as Ctrl+C reaches them all.
    process.kill(-started.pid, 'SIGINT');
    await ended;
  }
  own.gone();
});

/** Everything printed until the address stands there. */
async function printed(process: ChildProcess): Promise<string> {
  let text = '';
  for await (const piece of process.stdout ?? []) {
    text += String(piece);
    if (text.includes('Ctrl+C')) break;
  }
  return text;
}

describe('the README’s first command', () => {
  it('builds the kiosk of the demo shop, says so in few lines, and serves it where it says', async () => {
    expect(readFileSync('README.md', 'utf8')).toContain('\nnpm ci && npm start ');
    const env = { ...process.env, LACEWING_DIST: own.at('dist') };
    started = spawn('npm', ['start', '--', '--port', '4517'], {
      detached: true,
      env,
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    const text = await printed(started);
    expect(text.split('\n').length).toBeLessThan(16);
    // The port asked for, or one of those after it.
    expect(text).toMatch(/localhost:45\d\d/);
    expect(text).toContain('demo shop, in which everything is invented');
    const address = /^ {2}(http:\/\/localhost:\d+\/)$/m.exec(text)?.[1] ?? 'nowhere';
    const page = await (await fetch(address)).text();
    expect(page).toContain('Content-Security-Policy');
    const stock = await (await fetch(new URL('shop/stock.csv', address))).text();
    expect(stock).toBe(readFileSync('demo/stock.csv', 'utf8'));
  }, 120_000);
});
