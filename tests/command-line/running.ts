import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { run } from '../../src/command-line/run.ts';

/** What a command printed, and how it ended. */
export interface Ended {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs a command as `npm run -s fit -- …` does. */
export const command = (...args: readonly string[]): Promise<Ended> => ended(run, args);

async function ended(by: typeof run, args: readonly string[]): Promise<Ended> {
  let [out, err] = ['', ''];
  const code = await by(args, {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
  });
  return { code, out, err };
}

export const STORY = 'flows/fitting/stories/same-again.json';
export const NURSE = 'flows/fitting/stories/nurse-on-tiles.json';
export const STOCK = 'demo/stock.csv';

/** A folder of one's own, gone at the end. */
export function ownFolder(): { readonly at: (name: string) => string; readonly gone: () => void } {
  const folder = mkdtempSync(join(tmpdir(), 'lacewing-'));
  return { at: (name) => join(folder, name), gone: () => rmSync(folder, { recursive: true, force: true }) };
}

/** A file of the house, changed and written elsewhere. */
export function spoilt(path: string, target: string, change: (text: string) => string): string {
  const before = readFileSync(path, 'utf8');
  const after = change(before);
  if (after === before) throw new Error(`Nothing was changed in ${path}`);
  writeFileSync(target, after);
  return target;
}

/** A second house beside this one, in which a file of the content can be spoilt; its commands are its own. */
export async function secondHouse(folder: string) {
  mkdirSync(folder, { recursive: true });
  for (const part of ['src', 'flows', 'print-templates', 'demo', 'package.json', 'tsconfig.json'])
    cpSync(part, join(folder, part), { recursive: true });
  symlinkSync(join(process.cwd(), 'node_modules'), join(folder, 'node_modules'));
  const own: { readonly run: typeof run } = await import(join(folder, 'src/command-line/run.ts'));
  return {
    spoil: (path: string, change: (text: string) => string) => {
      const file = join(folder, path);
      spoilt(path, file, change);
      return () => cpSync(path, file);
    },
    command: (...args: readonly string[]): Promise<Ended> => ended(own.run, args),
  };
}
