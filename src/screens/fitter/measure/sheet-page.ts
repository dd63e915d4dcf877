import { measuringSheet, type Paper } from '../../../observation/measuring-sheet.ts';
import { sheetSvg } from '../../../observation/sheet-svg.ts';
import type { Words } from '../../../words/words.ts';
import a4 from './sheet-a4.css?url';
import letter from './sheet-letter.css?url';

const STYLES: Readonly<Record<Paper, string>> = { a4, letter };

/** The measuring sheet as a page of its own, to print at full size: no margin but the drawing's own. */
export function sheetPage(paper: Paper, words: Words): string {
  const svg = sheetSvg(measuringSheet(paper), (key) => words.say(key));
  const title = words.say('observation.sheet.title');
  const style = new URL(STYLES[paper], document.baseURI).href;
  return `<!doctype html><html lang="${words.language}" dir="${words.direction}"><head><meta charset="utf-8"><title>${title}</title><link rel="stylesheet" href="${style}"></head><body>${svg}</body></html>`;
}
