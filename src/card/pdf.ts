import * as loaded from 'pdfmake/build/pdfmake.js';
import type { Content, TDocumentDefinitions } from 'pdfmake/interfaces';
import type { FontBytes } from './font/metrics.ts';
import type { Page, Sheets } from './layout/layout-card.ts';
import { ASCENT, POINT } from './layout/mark.ts';
import { inBlack } from './logo.ts';
import { paintOf } from './paint.ts';
import { vectorsOf } from './pdf-vectors.ts';

/** What a PDF says of itself. */
export interface PdfInfo {
  readonly title: string;
  readonly language: string;
  /** ISO date of the visit: the file's own date too, so that the same card is the same bytes. */
  readonly date: string;
}

/** pdfmake's browser build runs in Node as well and writes the same bytes there. Its types do not know its default export. */
const pdfmake = (loaded as unknown as { readonly default: typeof loaded & LocalAccess }).default;
/** The browser build has no setter for it, unlike the other. */
interface LocalAccess {
  localAccessPolicy: (path: string) => boolean;
}

const FAMILY = 'Atkinson';

/**
 * A laid out card as a PDF file. The only place that knows pdfmake.
 *
 * The definition is built afresh each time, since pdfmake writes into what it is given. It may fetch nothing, over the
 * network or from disk. Same sheets, fonts and date: same bytes, in the browser and on the command line.
 */
export async function pdfOf(sheets: Sheets, fonts: FontBytes, info: PdfInfo): Promise<Uint8Array> {
  pdfmake.addVirtualFileSystem({ 'regular.ttf': stored(fonts.regular), 'bold.ttf': stored(fonts.bold) });
  pdfmake.addFonts({ [FAMILY]: { normal: 'regular.ttf', bold: 'bold.ttf' } });
  pdfmake.setUrlAccessPolicy(() => false);
  pdfmake.localAccessPolicy = () => false;
  const buffer = await pdfmake.createPdf(definition(sheets, info)).getBuffer();
  return new Uint8Array(buffer);
}

/** pdfmake makes a buffer of what it stores; for bytes the encoding means nothing. Its types know of text only. */
const stored = (bytes: Uint8Array): string => ({ data: bytes, encoding: 'base64' }) as unknown as string;

function definition(sheets: Sheets, info: PdfInfo): TDocumentDefinitions {
  const first = sheets.pages[0];
  if (!first) throw new Error('A card has at least one page');
  return {
    pageSize: { width: first.width / POINT, height: first.height / POINT },
    pageMargins: 0,
    defaultStyle: { font: FAMILY, fontSize: 10 },
    language: info.language,
    displayTitle: true,
    info: {
      title: info.title,
      creationDate: new Date(`${info.date}T00:00:00Z`),
      creator: 'Lacewing',
      producer: 'Lacewing',
    },
    content: sheets.pages.flatMap((page, index) => pageContent(page, sheets, index > 0)),
  } as TDocumentDefinitions;
}

function pageContent(page: Page, sheets: Sheets, breakBefore: boolean): Content[] {
  const vectors = vectorsOf(page.marks, sheets.ink);
  return [
    { text: '', fontSize: 1, ...(breakBefore ? { pageBreak: 'before' as const } : {}) },
    { canvas: vectors, absolutePosition: { x: 0, y: 0 } },
    ...page.marks.flatMap((mark): Content[] => {
      if (mark.kind === 'logo' || mark.kind === 'drawing') {
        const ink = mark.kind === 'drawing' ? (paintOf(mark.ink, sheets.ink) ?? '#000000') : undefined;
        return [
          {
            svg: ink ? mark.svg.replaceAll('currentColor', ink) : sheets.ink === 'black' ? inBlack(mark.svg) : mark.svg,
            width: mark.width / POINT,
            height: mark.height / POINT,
            absolutePosition: { x: mark.x / POINT, y: mark.y / POINT },
          },
        ];
      }
      if (mark.kind !== 'text') return [];
      return [
        {
          text: mark.text,
          fontSize: mark.size,
          bold: mark.bold,
          noWrap: true,
          color: paintOf(mark.ink, sheets.ink) ?? '#000000',
          absolutePosition: { x: mark.x / POINT, y: mark.y / POINT - mark.size * ASCENT },
        },
      ];
    }),
  ];
}
