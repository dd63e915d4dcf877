import { execFileSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

/** The folders of the pipeline in the order in which data flows; none may import from one further on. */
const LINE = [
  'units',
  'attributes',
  'flow',
  'interview',
  'observation',
  'visit',
  'stock',
  'sizing',
  'profile',
  'shortlist',
  'gaps',
  'card',
];
const OUTSIDE = ['storage', 'worker', 'screens', 'command-line'];
const BROWSER = ['storage', 'worker', 'screens'];

/** Pairs of a folder and what it may not import, and pairs that are well. */
const FORBIDDEN: readonly (readonly [string, string])[] = [
  ...LINE.flatMap((folder, at) => [
    ...[...LINE.slice(at + 1), ...OUTSIDE].map((other) => [folder, `../${other}/planted.ts`] as const),
    [folder, 'node:fs'] as const,
    ...(folder === 'flow' || folder === 'card' ? [] : [[folder, 'zod'] as const]),
    ...(folder === 'card' ? [] : [[folder, 'pdfmake'] as const]),
  ]),
  ...BROWSER.flatMap((folder) =>
    ['../command-line/planted.ts', 'node:fs', 'zod', '../flow/schema/flow.ts', '../flow/check/check-flow.ts'].map(
      (other) => [folder, other] as const,
    ),
  ),
  ['words', '../profile/planted.ts'],
];
const ALLOWED: readonly (readonly [string, string])[] = [
  ...LINE.slice(1).map((folder) => [folder, '../units/planted.ts'] as const),
  ['card', '../shortlist/planted.ts'],
  ['screens', '../card/planted.ts'],
];

const name = (at: number, allowed: boolean) => `${allowed ? 'well' : 'planted'}-${at}.ts`;
let refused: ReadonlySet<string>;
const folder = mkdtempSync(join(tmpdir(), 'lacewing-house-'));

beforeAll(() => {
  copyFileSync('biome.json', join(folder, 'biome.json'));
  const plant = (pairs: typeof FORBIDDEN, allowed: boolean) => {
    for (const [at, [into, from]] of pairs.entries()) {
      mkdirSync(join(folder, 'src', into), { recursive: true });
      writeFileSync(join(folder, 'src', into, name(at, allowed)), `import { it } from '${from}';\nconsole.log(it);\n`);
    }
  };
  plant(FORBIDDEN, false);
  plant(ALLOWED, true);
  const biome = join(process.cwd(), 'node_modules/.bin/biome');
  let report: string;
  try {
    report = execFileSync(biome, ['lint', '--reporter=json', '--max-diagnostics=none', '.'], {
      cwd: folder,
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    });
  } catch (reason) {
    report = (reason as { stdout: string }).stdout;
  }
  const { diagnostics } = JSON.parse(report) as {
    diagnostics: readonly { readonly category: string; readonly location: { readonly path: string } }[];
  };
  refused = new Set(
    diagnostics.filter(({ category }) => category.endsWith('noRestrictedImports')).map(({ location }) => location.path),
  );
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('data flows one way', () => {
  it.each(FORBIDDEN.map((pair, at) => [...pair, at] as const))('src/%s may not import %s', (into, _, at) => {
    expect(refused).toContain(`src/${into}/${name(at, false)}`);
  });

  it.each(ALLOWED.map((pair, at) => [...pair, at] as const))('src/%s may import %s', (into, _, at) => {
    expect(refused).not.toContain(`src/${into}/${name(at, true)}`);
  });

  it('in every folder there is', () => {
    const there = readdirSync('src', { withFileTypes: true }).filter((each) => each.isDirectory());
    // `drawings` holds pictures and `words` sentences: nothing flows through them.
    expect(there.map((each) => each.name).sort()).toEqual([...LINE, ...OUTSIDE, 'drawings', 'words'].sort());
  });
});
