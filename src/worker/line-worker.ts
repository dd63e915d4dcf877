import regularFont from '@expo-google-fonts/atkinson-hyperlegible-next/400Regular/AtkinsonHyperlegibleNext_400Regular.ttf?url';
import boldFont from '@expo-google-fonts/atkinson-hyperlegible-next/700Bold/AtkinsonHyperlegibleNext_700Bold.ttf?url';
import { expose } from 'comlink';
import type { CardFacts } from '../card/card.ts';
import type { Template } from '../card/template.ts';
import { textOf } from '../card/text/text-of.ts';
import twinStyles from '../card/twin.css?url';
import { twinPage } from '../card/twin.ts';
import { cardOfLine, type Line, lineOf } from '../pipeline.ts';
import typeStyles from '../screens/look/type.css?url';
import { firstBundles, otherBundles } from '../screens/parts/word-files.ts';
import { readStock } from '../stock/read-csv.ts';
import type { Stock } from '../stock/shoe.ts';
import { type BoxMark, stockToday } from '../stock/today.ts';
import type { Words } from '../words/words.ts';
import { wordsOf } from '../words/words-of.ts';
import { benchLine, decidedLine, shoesNamed } from './bench-line.ts';
import { knowledge } from './knowledge.ts';
import type { CardOrder, LineService } from './line-service.ts';

/** Feeds the varied importances behind "closest on paper"; one fixed number, so that a second look says the same. */
const SEED = 1;

let stock: Stock | undefined;
let today: { readonly marks: readonly BoxMark[]; readonly date: string } = { marks: [], date: '' };
const loaded = new Map<string, Promise<Words>>();
const templates = import.meta.glob<Template>('../../print-templates/*/template.json', { import: 'default' });

const wordsIn = (language: string): Promise<Words> => {
  const known = loaded.get(language);
  if (known) return known;
  const fresh = Promise.all([firstBundles(language), otherBundles(language)]).then(([first, other]) =>
    wordsOf(language, [...first, ...other]),
  );
  loaded.set(language, fresh);
  return fresh;
};

const inStock = (): Stock => {
  if (!stock) throw new Error('No stock is loaded');
  return stockToday(stock, today.marks, today.date);
};

function lineFor({ visit }: CardOrder): Line {
  return decidedLine(lineOf(visit, knowledge, inStock(), SEED), knowledge, inStock());
}

function factsFor(order: CardOrder, line: Line): CardFacts {
  const { shop, date, ticket, origin, copy } = order;
  return cardOfLine(line, knowledge, inStock(), { shop, date, ticket, origin, copy });
}

const bytesOf = async (url: string): Promise<Uint8Array> => new Uint8Array(await (await fetch(url)).arrayBuffer());

/** What drawing needs and nothing before it does: the PDF writer and two fonts, fetched once. */
let drawing: ReturnType<typeof loadDrawing> | undefined;
async function loadDrawing() {
  const [{ drawCard }, regular, bold] = await Promise.all([
    import('../card/draw-card.ts'),
    bytesOf(regularFont),
    bytesOf(boldFont),
  ]);
  return { drawCard, fonts: { regular, bold } };
}
const drawingParts = () => {
  drawing ??= loadDrawing();
  return drawing;
};

async function templateOf(format: string): Promise<Template> {
  const load =
    templates[`../../print-templates/${format}/template.json`] ?? templates['../../print-templates/a5/template.json'];
  if (!load) throw new Error('There are no print templates');
  return load();
}

const service: LineService = {
  readStock: (text, asOf) => {
    const { value, findings } = readStock(text, { asOf });
    return { stock: value, shoes: value?.shoes.length ?? 0, boxes: value?.boxes.length ?? 0, findings };
  },
  useStock: (next) => {
    stock = next;
  },
  useMarks: (marks, date) => {
    today = { marks, date };
  },
  bench: (order) => benchLine(order, knowledge, inStock(), SEED),
  findShoes: (typed) => shoesNamed(typed, inStock()),
  fit: (visit, seed) => lineOf(visit, knowledge, inStock(), seed),
  facts: (order) => {
    const line = lineFor(order);
    return { facts: factsFor(order, line), hold: line.profile.hold };
  },
  twin: async (order) =>
    twinPage(textOf(factsFor(order, lineFor(order)), await wordsIn(order.language)), [
      new URL(typeStyles, import.meta.url).href,
      new URL(twinStyles, import.meta.url).href,
    ]),
  pdf: async (order) => {
    const [{ drawCard, fonts }, template, words] = await Promise.all([
      drawingParts(),
      templateOf(order.format),
      wordsIn(order.language),
    ]);
    const { pdf } = await drawCard(factsFor(order, lineFor(order)), words, template, fonts);
    return pdf;
  },
  warm: async (language) => {
    await Promise.all([drawingParts(), wordsIn(language)]);
  },
};

expose(service);
