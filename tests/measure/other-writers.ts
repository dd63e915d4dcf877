import type { Browser } from '@playwright/test';
import * as fontkit from 'fontkit';
import { jsPDF } from 'jspdf';
import { PDFDocument } from 'pdf-lib';
import { measureOf } from '../../src/card/font/metrics.ts';
import { layoutCard, type Sheets } from '../../src/card/layout/layout-card.ts';
import { POINT } from '../../src/card/layout/mark.ts';
import { pdfOf } from '../../src/card/pdf.ts';
import { readShop } from '../../src/card/read-shop.ts';
import type { Template } from '../../src/card/template.ts';
import { textOf } from '../../src/card/text/text-of.ts';
import { twinPage } from '../../src/card/twin.ts';
import { readText } from '../../src/command-line/files.ts';
import { fontsOnDisk } from '../../src/command-line/fonts-on-disk.ts';
import { loadKnowledge, loadStock, loadVisit } from '../../src/command-line/load.ts';
import { DEMO_SHOP, PRINT_TEMPLATES, twinStyles } from '../../src/command-line/places.ts';
import { wordsOnDisk } from '../../src/command-line/words-on-disk.ts';
import { cardOfLine, lineOf } from '../../src/pipeline.ts';

/** Middle of some runs once loaded, milliseconds, and the file's size. */
export interface Writer {
  readonly name: string;
  readonly ms: number;
  readonly bytes: number;
}
/** Runs per writer, the first not counted. */
const RUNS = 6;
const fonts = fontsOnDisk();
const base64 = (bytes: Uint8Array): string => Buffer.from(bytes).toString('base64');

/** The same page of text (not the drawings) by two general PDF libraries and by the browser's own print-to-PDF. */
export async function otherWriters(browser: Browser): Promise<readonly Writer[]> {
  const { sheets, html } = sampleCard();
  const page = await browser.newPage();
  await page.setContent(html);
  const writers = {
    'this card, drawings and all': () => pdfOf(sheets, fonts, { title: 'card', language: 'en', date: '2026-11-25' }),
    'pdf-lib, text alone': () => byPdfLib(sheets),
    'jspdf, text alone': async () => byJsPdf(sheets),
    'browser print-to-PDF of the reading copy': () => page.pdf({ format: 'A5' }),
  };
  const told: Writer[] = [];
  for (const [name, write] of Object.entries(writers)) {
    const runs: number[] = [];
    let bytes = 0;
    for (let run = 0; run < RUNS; run++) {
      const began = performance.now();
      bytes = (await write()).length;
      if (run > 0) runs.push(performance.now() - began);
    }
    told.push({ name, ms: runs.sort((a, b) => a - b)[Math.floor(runs.length / 2)] ?? 0, bytes });
  }
  await page.close();
  return told;
}

function sampleCard(): { readonly sheets: Sheets; readonly html: string } {
  const knowledge = loadKnowledge();
  const { visit } = loadVisit('flows/fitting/stories/nurse-on-tiles.json', knowledge);
  const { stock } = loadStock('demo/stock.csv', '2026-11-25T08:00:00');
  const { value: shop } = readShop(readText(DEMO_SHOP), DEMO_SHOP);
  if (!shop) throw new Error('The demo shop could not be read');
  const request = { shop, date: '2026-11-25', ticket: 'maple 14', copy: 'customer' } as const;
  const text = textOf(cardOfLine(lineOf(visit, knowledge, stock, 1), knowledge, stock, request), wordsOnDisk('en'));
  const template = JSON.parse(readText(`${PRINT_TEMPLATES}/a5/template.json`)) as Template;
  const html = twinPage(text, []).replace(
    '</head>',
    () => `<style>${twinStyles('a5').map(readText).join('')}</style></head>`,
  );
  return { sheets: layoutCard(text, template, measureOf(fonts)), html };
}

async function byPdfLib({ pages }: Sheets): Promise<Uint8Array> {
  const file = await PDFDocument.create();
  // Whole fonts: its subsetting wants an older font reader than the one here.
  file.registerFontkit(fontkit as unknown as Parameters<typeof file.registerFontkit>[0]);
  const regular = await file.embedFont(fonts.regular);
  const bold = await file.embedFont(fonts.bold);
  for (const { width, height, marks } of pages) {
    const page = file.addPage([width / POINT, height / POINT]);
    for (const mark of marks) {
      if (mark.kind !== 'text') continue;
      const y = (height - mark.y) / POINT;
      page.drawText(mark.text, { x: mark.x / POINT, y, size: mark.size, font: mark.bold ? bold : regular });
    }
  }
  return file.save();
}

function byJsPdf({ pages }: Sheets): Uint8Array {
  const [first] = pages;
  const file = new jsPDF({ unit: 'mm', format: [first?.width ?? 148, first?.height ?? 210] });
  file.addFileToVFS('regular.ttf', base64(fonts.regular));
  file.addFileToVFS('bold.ttf', base64(fonts.bold));
  file.addFont('regular.ttf', 'Atkinson', 'normal');
  file.addFont('bold.ttf', 'Atkinson', 'bold');
  pages.forEach(({ marks }, at) => {
    if (at > 0) file.addPage();
    for (const mark of marks) {
      if (mark.kind !== 'text') continue;
      file.setFont('Atkinson', mark.bold ? 'bold' : 'normal');
      file.setFontSize(mark.size);
      file.text(mark.text, mark.x, mark.y);
    }
  });
  return new Uint8Array(file.output('arraybuffer'));
}
