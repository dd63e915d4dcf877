import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'lacewing-types-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** What the type checker says of one file under the pipeline's own settings. */
function checked(text: string): { readonly ok: boolean; readonly said: string } {
  writeFileSync(join(folder, 'planted.ts'), text);
  const config = { extends: join(process.cwd(), 'tsconfig.json'), include: ['planted.ts'], exclude: [] };
  writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify(config));
  const { status, stdout } = spawnSync(join(process.cwd(), 'node_modules/.bin/tsc'), ['-p', folder], {
    encoding: 'utf8',
  });
  return { ok: status === 0, said: stdout };
}

describe('the pipeline knows no machine', () => {
  it('plain code passes', () =>
    expect(checked('export const twice = (n: number): number => n * 2;\n')).toEqual({ ok: true, said: '' }));

  it.each([
    ['a document', 'export const it = document.title;\n', 'document'],
    ['a window', 'export const it = window.innerWidth;\n', 'window'],
    ['a browser’s store', 'export const it = localStorage;\n', 'localStorage'],
    ['the network', "export const it = fetch('x');\n", 'fetch'],
    ['a timer', 'export const it = setTimeout(() => {}, 1);\n', 'setTimeout'],
    ['the process', 'export const it = process.env;\n', 'process'],
    ['files', "import { readFileSync } from 'node:fs';\nexport const it = readFileSync;\n", 'node:fs'],
  ])('%s does not', (_, text, name) => {
    const { ok, said } = checked(text);
    expect(ok).toBe(false);
    expect(said).toContain(name);
  });
});
