import { existsSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { COPIES } from '../card/card.ts';
import { readTemplate } from '../card/check-template.ts';
import { drawCard } from '../card/draw-card.ts';
import { fittersFormat } from '../card/fitters-format.ts';
import { isOrigin, readShop } from '../card/read-shop.ts';
import type { Shop } from '../card/shop.ts';
import type { Template } from '../card/template.ts';
import type { CardText } from '../card/text/card-text.ts';
import { textOf } from '../card/text/text-of.ts';
import { twinPage } from '../card/twin.ts';
import { inCurrency } from '../flow/in-currency.ts';
import { cardOfLine, lineOf } from '../pipeline.ts';
import type { Finding } from '../units/result.ts';
import type { Words } from '../words/words.ts';
import { isFolder, jsonIn, readText, writeWhole } from './files.ts';
import { fontsOnDisk } from './fonts-on-disk.ts';
import { loadKnowledge, loadStock, loadVisit } from './load.ts';
import { dateOf, FLAG, type Given, readOptions, TEXT } from './options.ts';
import { picturesOnDisk } from './pictures-on-disk.ts';
import { DEMO_SHOP, PRINT_TEMPLATES, twinStyles } from './places.ts';
import { Refusal, usage } from './refusal.ts';
import type { Said } from './said.ts';
import { SEED } from './shortlist.ts';
import { wordsOnDisk } from './words-on-disk.ts';

const OPTIONS = ['stock', 'out', 'format', 'language', 'date', 'ticket', 'shop', 'origin', 'copy'];

/**
 * `fit card <answers.json…|folder> --stock <stock.csv> --out card.pdf|folder …`: a card for each visit; a folder stands
 * for the answers in it. All answers are read before the first card is written, so that a bad file leaves nothing behind.
 */
export async function card(args: readonly string[]): Promise<Said> {
  const given = readOptions(args, { ...Object.fromEntries(OPTIONS.map((name) => [name, TEXT])), html: FLAG }, MANY);
  const files = given.files.flatMap((path) => (isFolder(path) ? jsonIn(path) : [path]));
  if (files.length === 0) throw usage('answers-missing');
  const out = given.needed('out');
  if (out === '') throw usage('option-missing', '--out');
  const ending = given.flag('html') ? '.html' : '.pdf';
  const intoFolder = isFolder(out) || !out.endsWith(ending);
  if (files.length > 1 && !intoFolder) throw usage('many-need-folder', out);
  const targetOf = (path: string): string =>
    intoFolder ? join(out, `${basename(path).replace(/\.json$/, '')}${ending}`) : out;
  const twice = files.find((path, at) => files.findIndex((other) => targetOf(other) === targetOf(path)) < at);
  if (twice !== undefined) throw usage('card-twice', targetOf(twice));

  const shop = shopOf(given.text('shop') ?? DEMO_SHOP);
  const date = dateOf(given);
  const ticket = ticketOf(given);
  const origin = originOf(given);
  const copy = copyOf(given);
  const usual = copy === 'fitter' ? fittersFormat(shop.cardFormat) : shop.cardFormat;
  const template = templateOf(given.text('format') ?? usual);
  const knowledge = loadKnowledge();
  const { stock, findings: inStock } = loadStock(given.needed('stock'), `${date}T08:00:00`);
  const visits = files.map((path) => ({ path, ...loadVisit(path, knowledge) }));
  const fonts = fontsOnDisk();
  const pictures = picturesOnDisk();
  const findings: Finding[] = inStock.map((finding) => ({ ...finding, severity: 'note' }));
  const written: string[] = [];
  for (const { path, visit, findings: inVisit } of visits) {
    findings.push(...inVisit);
    const words = inCurrency(wordsFor(given, visit.language, shop, copy), knowledge.flow, shop.currency);
    const began = performance.now();
    const line = lineOf(visit, knowledge, stock, SEED);
    const facts = cardOfLine(line, knowledge, stock, {
      shop,
      date,
      ticket,
      copy,
      ...(origin === undefined ? {} : { origin }),
    });
    const target = targetOf(path);
    if (given.flag('html') || words.direction === 'rtl') {
      if (!given.flag('html')) throw new Refusal('card-right-to-left', words.language);
      writeWhole(target, styledPage(textOf(facts, words, pictures), template.id));
      written.push(target);
      continue;
    }
    const { pdf, missing } = await drawCard(facts, words, template, fonts, pictures);
    if (missing.length > 0) {
      findings.push({
        code: 'card-missing-characters',
        severity: 'note',
        file: path,
        data: { characters: missing.join(' ') },
      });
    }
    writeWhole(target, pdf);
    const first = line.shortlist.lineUps[0]?.entries[0]?.shoe.name ?? '–';
    const ms = Math.round(performance.now() - began);
    written.push(`${target}  ${line.profile.outcome}, first ${first}, ${Math.round(pdf.length / 1000)} kB, ${ms} ms`);
  }
  return { text: `${written.join('\n')}\n`, findings };
}

function shopOf(path: string): Shop {
  const text = readText(path);
  const { value, findings } = readShop(text, path, logoOf(text, path));
  if (!value) throw new Refusal(findings);
  return value;
}

/** The drawing a shop file names, from beside it. */
function logoOf(shop: string, path: string): string | undefined {
  const name = /"logo"\s*:\s*"([^"/\\]+)"/.exec(shop)?.[1];
  const file = name === undefined ? undefined : join(dirname(path), name);
  return file !== undefined && existsSync(file) ? readText(file) : undefined;
}

function templateOf(format: string): Template {
  const folder = join(PRINT_TEMPLATES, format);
  if (!/^[a-z0-9-]+$/.test(format) || !isFolder(folder)) throw usage('format-unknown', format);
  const file = join(folder, 'template.json');
  const { value, findings } = readTemplate(file, readText(file));
  if (!value) throw new Refusal(findings);
  return value;
}

/** A page that stands alone: its style sheet is written into it, since a file on disk has no neighbours to fetch. */
const styledPage = (text: CardText, format: string): string =>
  twinPage(text, []).replace('</head>', () => `<style>${twinStyles(format).map(readText).join('')}</style></head>`);

function copyOf(given: Given) {
  const wanted = given.text('copy') ?? 'customer';
  const copy = COPIES.find((each) => each === wanted);
  if (!copy) throw usage('copy-unknown', wanted);
  return copy;
}

/** As many files as somebody likes. */
const MANY = Number.POSITIVE_INFINITY;

/** In characters; the tablet's own have twelve at most. Our choice. */
const LONGEST_TICKET = 40;

/** It stands on each page in one line, and has to be called across a counter. */
function ticketOf(given: Given): string {
  const ticket = given.text('ticket') ?? 'maple 14';
  if (ticket.trim() === '' || ticket.length > LONGEST_TICKET || /\p{C}/u.test(ticket)) {
    throw usage('ticket-wrong', ticket.slice(0, LONGEST_TICKET), { most: LONGEST_TICKET });
  }
  return ticket;
}

function originOf(given: Given): string | undefined {
  const origin = given.text('origin');
  if (origin !== undefined && !isOrigin(origin)) throw usage('origin-wrong', origin.slice(0, 80));
  return origin;
}

/** A customer's copy is in their language, a fitter's in the shop's; `--language` says otherwise. */
const wordsFor = (given: Given, visitor: string, shop: Shop, copy: 'customer' | 'fitter'): Words =>
  wordsOnDisk(given.text('language') ?? (copy === 'fitter' ? shop.language : visitor));
