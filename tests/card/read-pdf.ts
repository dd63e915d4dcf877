import { readFileSync } from 'node:fs';
import { createCanvas } from '@napi-rs/canvas';
import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';

// From disk: left to itself the decoder would fetch its program over the network.
const wasmBinary = new Uint8Array(readFileSync('node_modules/zxing-wasm/dist/reader/zxing_reader.wasm')).buffer;
prepareZXingModule({ overrides: { wasmBinary } });

/** An independent reader of a PDF: pdf.js, as browsers have it. */
export async function openPdf(bytes: Uint8Array): Promise<PDFDocumentProxy> {
  return getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
}

/** All text of a page, in the order it stands in the file. */
export async function pageText(pdf: PDFDocumentProxy, number: number): Promise<string> {
  const { items } = await (await pdf.getPage(number)).getTextContent();
  return items
    .map((item) => ('str' in item ? item.str : ''))
    .join(' ')
    .replaceAll(/\s+/g, ' ');
}

export async function allText(pdf: PDFDocumentProxy): Promise<string> {
  const pages = await Promise.all(Array.from({ length: pdf.numPages }, (_, at) => pageText(pdf, at + 1)));
  return pages.join(' ');
}

/** A page as a picture, at so many dots an inch. */
export async function pagePicture(pdf: PDFDocumentProxy, number: number, dpi: number): Promise<ImageData> {
  const page = await pdf.getPage(number);
  const viewport = page.getViewport({ scale: dpi / 72 });
  const canvas = createCanvas(Math.round(viewport.width), Math.round(viewport.height));
  const context = canvas.getContext('2d');
  await page.render({ canvas: canvas as never, canvasContext: context as never, viewport }).promise;
  const { data, width, height } = context.getImageData(0, 0, canvas.width, canvas.height);
  return { data: new Uint8ClampedArray(data), width, height, colorSpace: 'srgb' } as ImageData;
}

/** What a decoder reads from a picture of the first page at so many dots an inch. */
export async function codeInPicture(pdf: PDFDocumentProxy, dpi: number): Promise<readonly string[]> {
  const codes = await readBarcodes(await pagePicture(pdf, 1, dpi), { formats: ['QRCode'], tryHarder: true });
  return codes.filter((code) => code.isValid).map((code) => code.text);
}
