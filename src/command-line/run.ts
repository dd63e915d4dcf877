import { NoWords } from '../words/no-words.ts';
import type { Words } from '../words/words.ts';
import { card } from './card.ts';
import { check } from './check.ts';
import { map } from './map.ts';
import { SHARED_WORDS } from './places.ts';
import { profile } from './profile.ts';
import { Refusal, usage } from './refusal.ts';
import { rules } from './rules.ts';
import type { Said } from './said.ts';
import { sayFinding } from './say-findings.ts';
import { shortlist } from './shortlist.ts';
import { size } from './size.ts';
import { stock } from './stock.ts';
import { wordsOnDisk } from './words-on-disk.ts';

const COMMANDS = { check, map, rules, stock, size, profile, shortlist, card } as const;
const USAGE = `fit check [flow folder] [--paths] [--json]
fit map [flow folder] --out map.svg
fit rules [flow folder] [--json]
fit stock <stock.csv> [--json]
fit size --left 262 --right 265 [--ball …] [--girth …] [--width …] [--shelf men|women|junior] [--activity …]
         [--age 6-to-10] [--checked] [--json]
fit profile <answers.json> [--why] [--json]
fit shortlist <answers.json> --stock <stock.csv> [--json]
fit card <answers.json…> --stock <stock.csv> --out card.pdf|folder [--format a5] [--language en] [--date 2026-11-25]
         [--ticket "maple 14"] [--shop demo/shop.json] [--origin https://…] [--copy customer|fitter] [--html]
`;

const HELP: readonly string[] = ['--help', '-h'];

/** Where a command's words go. */
export interface Outlets {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}

/** Where the words themselves cannot be read, a finding is still said, by its code and data. */
const WORDLESS: Pick<Words, 'has' | 'say'> = { has: () => false, say: (key) => key };

/** A shoe's name must not clear a terminal or turn its lines round: such characters are written out, as JSON writes them. */
const harmless = (text: string): string =>
  text.replaceAll(
    /(?!\n)[\p{Cc}\u202A-\u202E\u2066-\u2069]/gu,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );

/** A language half translated is found by `check`; whoever draws a card in it first is told which sentence is missing. */
const refusalOf = ({ key, language }: NoWords): Refusal =>
  new Refusal([{ code: 'words-missing', severity: 'error', file: `${SHARED_WORDS}/${language}`, value: key }]);

/**
 * Runs one command and gives its exit code: 0 done, 1 findings, 2 usage. What was found goes to `err`, results to
 * `out`. A fault of the program itself is thrown.
 */
export async function run(args: readonly string[], outlets: Outlets): Promise<number> {
  const out = (text: string) => outlets.out(harmless(text));
  const err = (text: string) => outlets.err(harmless(text));
  let words: Pick<Words, 'has' | 'say'> = WORDLESS;
  try {
    const full = wordsOnDisk('en');
    words = full;
    if (args.some((each) => HELP.includes(each))) {
      out(USAGE);
      return 0;
    }
    const [name = '', ...rest] = args;
    const command = Object.hasOwn(COMMANDS, name) ? COMMANDS[name as keyof typeof COMMANDS] : undefined;
    if (!command) {
      err(USAGE);
      throw usage('command-unknown', name);
    }
    const said: Said = await command(rest, full);
    out(said.text);
    for (const finding of said.findings) err(`${sayFinding(finding, words)}\n`);
    return said.findings.some(({ severity }) => severity === 'error') ? 1 : 0;
  } catch (reason) {
    const refusal = reason instanceof NoWords ? refusalOf(reason) : reason;
    if (!(refusal instanceof Refusal)) throw reason;
    for (const finding of refusal.findings) err(`${sayFinding(finding, words)}\n`);
    return refusal.exit;
  }
}
