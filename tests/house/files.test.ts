import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const text = (path: string) => readFileSync(path, 'utf8');
const under = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((each) => each.isFile())
    .map((each) => join(each.parentPath, each.name));
const code = under('src').filter((path) => path.endsWith('.ts'));
const lines = (path: string) => text(path).split('\n').length - 1;

/** Files longer than 300 lines, each with its reason. */
const LONG: Readonly<Record<string, string>> = {
  'src/screens/customer/kiosk.ts':
    'the one element that carries a visit from welcome to card; its pages are files of their own',
};

describe('files', () => {
  it('pass 300 lines only with a reason', () => {
    expect(code.filter((path) => lines(path) > 300 && !LONG[path])).toEqual([]);
  });

  it('are rarely longer than 180', () => {
    expect(code.filter((path) => lines(path) > 180).length / code.length).toBeLessThan(0.06);
  });

  it('go into no drawer', () => {
    expect(
      [...code, ...under('tests')].filter((path) => /(^|\/)(utils?|helpers?|types|misc|common)(\.|\/)/.test(path)),
    ).toEqual([]);
  });

  it('of tests have nothing skipped, alone or put off', () => {
    const off = /\b(?:it|test|describe)\.(?:skip|only|todo|fixme)\b|\b(?:TO)(?:DO)\b|\bFIX(?:ME)\b/;
    expect(
      [...code, ...under('tests').filter((path) => path.endsWith('.ts'))].filter((path) => off.test(text(path))),
    ).toEqual([]);
  });
});

describe('the documents', () => {
  const developers = text('DEVELOPERS.md');
  const readme = text('README.md');
  const scripts: Readonly<Record<string, string>> = JSON.parse(text('package.json')).scripts;

  it('name every folder of src', () => {
    const folders = readdirSync('src', { withFileTypes: true }).filter((each) => each.isDirectory());
    expect(folders.map(({ name }) => name).filter((name) => !developers.includes(`(src/${name})`))).toEqual([]);
  });

  it('link to nothing that is not there', () => {
    for (const [path, source] of [
      ['README.md', readme],
      ['DEVELOPERS.md', developers],
    ] as const) {
      const links = [...source.matchAll(/\]\((?!https?:|#)([^)]+)\)/g)].map(([, link]) => link ?? '');
      expect(
        links.filter((link) => !existsAt(link)),
        path,
      ).toEqual([]);
    }
  });

  it('name only commands that there are', () => {
    const named = [...`${readme}\n${developers}`.matchAll(/npm (?:run (?:-s )?)?([a-z][a-z:-]*)/g)].map(
      ([, name]) => name ?? '',
    );
    expect(named.length).toBeGreaterThan(8);
    expect(named.filter((name) => name !== 'ci' && !scripts[name])).toEqual([]);
  });

  it('are run by the scripts: every file a script names is there', () => {
    const files = Object.values(scripts).flatMap((script) => script.match(/\b(?:src|tests|demo)\/[\w./-]+/g) ?? []);
    expect(files.filter((path) => !existsAt(path))).toEqual([]);
  });
});

function existsAt(path: string): boolean {
  try {
    return text(path) !== undefined;
  } catch (reason) {
    return (reason as { code?: string }).code === 'EISDIR';
  }
}
