/**
 * The line without a screen. `npm run -s fit -- <command> …`; the commands are listed in README.md.
 *
 * Exit 0 done, 1 findings, 2 usage. What was found goes to standard error, results to standard output.
 */
import { card } from './card.ts';
import { check } from './check.ts';
import { map } from './map.ts';
import { profile } from './profile.ts';
import { Refusal, usage } from './refusal.ts';
import type { Said } from './said.ts';
import { sayFinding } from './say-findings.ts';
import { shortlist } from './shortlist.ts';
import { size } from './size.ts';
import { stock } from './stock.ts';
import { wordsOnDisk } from './words-on-disk.ts';

const COMMANDS = { check, map, stock, size, profile, shortlist, card } as const;
const USAGE = `fit check [flow folder] [--paths] [--json]
fit map [flow folder] --out map.svg
fit stock <stock.csv> [--json]
fit size --left 262 --right 265 [--ball …] [--girth …] [--width …] [--shelf men|women|junior] [--activity …] [--json]
fit profile <answers.json> [--why] [--json]
fit shortlist <answers.json> --stock <stock.csv> [--json]
fit card <answers.json…> --stock <stock.csv> --out card.pdf|folder [--format a5] [--language en] [--date 2026-11-25]
         [--ticket "maple 14"] [--shop demo/shop.json] [--origin https://…] [--copy customer|fitter] [--html]
`;

async function main(args: readonly string[]): Promise<number> {
  const words = wordsOnDisk('en');
  try {
    const [name = '', ...rest] = args;
    const command = Object.hasOwn(COMMANDS, name) ? COMMANDS[name as keyof typeof COMMANDS] : undefined;
    if (!command) {
      process.stderr.write(USAGE);
      throw usage('command-unknown', name);
    }
    const said: Said = await command(rest, words);
    process.stdout.write(said.text);
    for (const finding of said.findings) process.stderr.write(`${sayFinding(finding, words)}\n`);
    return said.findings.some(({ severity }) => severity === 'error') ? 1 : 0;
  } catch (reason) {
    if (!(reason instanceof Refusal)) throw reason;
    for (const finding of reason.findings) process.stderr.write(`${sayFinding(finding, words)}\n`);
    return reason.exit;
  }
}

process.exitCode = await main(process.argv.slice(2));
