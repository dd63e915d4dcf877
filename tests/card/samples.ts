/**
 * A card for every story and format into `samples/cards`, and in the fitter's formats a visit with all there is to
 * record; with a contact sheet of page pictures for each format, and `demo/cards.png`, a sheet of a few of them that is
 * kept with the project. `npm run samples`; `-- --language de` for another language, `-- --format a5` for one format
 * alone.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { createCanvas, ImageData as Picture } from '@napi-rs/canvas';
import { PNG } from 'pngjs';
import { drawCard } from '../../src/card/draw-card.ts';
import type { Template } from '../../src/card/template.ts';
import { fontsOnDisk } from '../../src/command-line/fonts-on-disk.ts';
import { picturesOnDisk } from '../../src/command-line/pictures-on-disk.ts';
import { atTheBench } from './bench-visit.ts';
import { openPdf, pagePicture } from './read-pdf.ts';
import { copyFor, SAMPLE_FORMATS, sampleFacts, sampleWords, storyNames } from './sample-lines.ts';

const { values } = parseArgs({
  options: {
    out: { type: 'string', default: 'samples/cards' },
    language: { type: 'string', default: 'en' },
    format: { type: 'string' },
  },
});

/** One of each outcome, two line-ups, a child, and the fitter's formats: what the kept sheet shows. */
const KEPT: readonly (readonly [string, string])[] = [
  ['netball-old-sprain', 'a5'],
  ['child-growth-spurt', 'a5'],
  ['runner-tall-soft-to-flat', 'a5'],
  ['trail-and-gym', 'a5'],
  ['pair-is-fine', 'a5'],
  ['studs-sport', 'a5'],
  ['hot-swollen-calf', 'a5'],
  ['prescribed-orthosis', 'a5'],
  ['hill-walker-wet', 'a4'],
  ['kitchen-slip', 'roll80'],
];
const SHEET_DPI = 34;
const KEPT_DPI = 36;
/** Shades of each colour in the kept sheet: enough for line and type, and half the file. */
const SHADES = 16;
const GAP = 10;

const fonts = fontsOnDisk();
const pictures = picturesOnDisk();
const templateOf = (format: string): Template =>
  JSON.parse(readFileSync(`print-templates/${format}/template.json`, 'utf8'));

/** A visit that went on to the end at the bench: for the fitter's formats. */
const DECIDED = 'netball-old-sprain';

async function drawn(story: string, format: string, language: string, change = {}): Promise<Uint8Array> {
  const facts = sampleFacts(story, copyFor(format), change);
  return (await drawCard(facts, sampleWords(language), templateOf(format), fonts, pictures)).pdf;
}

async function pagesOf(bytes: Uint8Array, dpi: number): Promise<readonly ImageData[]> {
  const pdf = await openPdf(bytes);
  const pages: ImageData[] = [];
  for (let number = 1; number <= pdf.numPages; number++) pages.push(await pagePicture(pdf, number, dpi));
  return pages;
}

/** Pages side by side in rows no wider than `width` dots, on a grey ground. */
function sheet(pages: readonly ImageData[], width: number): Buffer {
  const spots: { page: ImageData; x: number; y: number }[] = [];
  let [x, y, high] = [GAP, GAP, 0];
  for (const page of pages) {
    if (x > GAP && x + page.width + GAP > width) {
      y += high + GAP;
      [x, high] = [GAP, 0];
    }
    spots.push({ page, x, y });
    x += page.width + GAP;
    high = Math.max(high, page.height);
  }
  const canvas = createCanvas(width, y + high + GAP);
  const context = canvas.getContext('2d');
  context.fillStyle = '#8a8f94';
  context.fillRect(0, 0, canvas.width, canvas.height);
  for (const spot of spots) {
    const { data, width: w, height: h } = spot.page;
    context.putImageData(new Picture(data as unknown as Uint8ClampedArray, w, h), spot.x, spot.y);
  }
  return canvas.toBuffer('image/png');
}

function fewerShades(png: Buffer): Buffer {
  const picture = PNG.sync.read(png);
  const step = 255 / (SHADES - 1);
  picture.data.forEach((value, at) => {
    picture.data[at] = Math.round(Math.round(value / step) * step);
  });
  return PNG.sync.write(picture, { colorType: 2, deflateLevel: 9 });
}

for (const format of values.format ? [values.format] : SAMPLE_FORMATS) {
  const folder = join(values.out, format);
  mkdirSync(folder, { recursive: true });
  const pages: ImageData[] = [];
  const counts: number[] = [];
  const sizes: number[] = [];
  for (const story of storyNames) {
    const bytes = await drawn(story, format, values.language);
    writeFileSync(join(folder, `${story}.pdf`), bytes);
    const own = await pagesOf(bytes, SHEET_DPI);
    pages.push(...own);
    counts.push(own.length);
    sizes.push(Math.round(bytes.length / 1000));
  }
  if (copyFor(format) === 'fitter') {
    const decided = await drawn(DECIDED, format, values.language, atTheBench(DECIDED));
    writeFileSync(join(folder, `${DECIDED}-decided.pdf`), decided);
    pages.push(...(await pagesOf(decided, SHEET_DPI)));
  }
  writeFileSync(join(values.out, `sheet-${format}.png`), sheet(pages, 2400));
  const most = (numbers: readonly number[]) => `${Math.min(...numbers)} to ${Math.max(...numbers)}`;
  process.stdout.write(`${folder}: ${counts.length} cards, ${most(counts)} pages, ${most(sizes)} kB\n`);
}

if (values.language === 'en' && !values.format) {
  const kept: ImageData[] = [];
  for (const [story, format] of KEPT) kept.push(...(await pagesOf(await drawn(story, format, 'en'), KEPT_DPI)));
  writeFileSync('demo/cards.png', fewerShades(sheet(kept, 1510)));
  process.stdout.write('demo/cards.png\n');
}
