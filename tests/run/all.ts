/**
 * Runs every check and prints one closing line: `N passed, N failed`. Each part that is one command counts as one.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';

interface Count {
  readonly passed: number;
  readonly failed: number;
}
const ONE_PASSED: Count = { passed: 1, failed: 0 };
const ONE_FAILED: Count = { passed: 0, failed: 1 };
const run = (command: string, args: readonly string[]): boolean =>
  spawnSync(command, args, { stdio: 'inherit' }).status === 0;

const part = (title: string, work: () => Count): Count => {
  const began = Date.now();
  process.stdout.write(`\n== ${title}\n`);
  const count = work();
  process.stdout.write(
    `== ${title}: ${count.passed} passed, ${count.failed} failed (${Math.round((Date.now() - began) / 1000)} s)\n`,
  );
  return count;
};
const command = (name: string, args: readonly string[]) => () => (run(name, args) ? ONE_PASSED : ONE_FAILED);

/** Unit, property and published checks; the count is Vitest's own. A run that leaves no report has failed. */
function units(): Count {
  const report = 'test-results/units.json';
  const ok = run('npx', ['vitest', 'run', '--reporter=dot', '--reporter=json', `--outputFile=${report}`]);
  if (!existsSync(report)) return ONE_FAILED;
  const { numPassedTests, numFailedTests } = JSON.parse(readFileSync(report, 'utf8'));
  return { passed: numPassedTests, failed: ok ? numFailedTests : Math.max(1, numFailedTests) };
}

/** The screens in a real browser. */
function browser(): Count {
  const ok = run('npx', ['playwright', 'test', '--config', 'tests/browser/playwright.config.ts']);
  const report = 'test-results/browser.json';
  if (!existsSync(report)) return ONE_FAILED;
  const { expected, unexpected, flaky } = JSON.parse(readFileSync(report, 'utf8')).stats;
  return { passed: expected, failed: ok ? unexpected + flaky : Math.max(1, unexpected + flaky) };
}

rmSync('test-results', { recursive: true, force: true });
mkdirSync('test-results', { recursive: true });
execFileSync('npx', ['tsx', 'tests/run/browser-ready.ts'], { stdio: 'inherit' });
const counts = [
  part('types', command('npm', ['run', '-s', 'check:types'])),
  part('style and import direction', command('npm', ['run', '-s', 'check:style'])),
  part('the flow', command('npm', ['run', '-s', 'fit', '--', 'check', 'flows/fitting'])),
  part('units, laws, published figures', units),
  part('build', command('npm', ['run', '-s', 'build'])),
  part('screens in a browser', browser),
];
const total = counts.reduce((sum, each) => ({ passed: sum.passed + each.passed, failed: sum.failed + each.failed }));
process.stdout.write(`\n${total.passed} passed, ${total.failed} failed\n`);
process.exitCode = total.failed > 0 ? 1 : 0;
