import type { MeasuringSheet, SheetMark } from './measuring-sheet.ts';

/**
 * The measuring sheet as an SVG drawing in millimetres: it prints to size at 100 %.
 *
 * Presentation is by attributes alone, so that a page with a strict content policy may show it.
 *
 * @example sheetSvg(measuringSheet('a4'), (key) => key) // '<svg … width="210mm" height="297mm" viewBox="0 0 210 297">…'
 */
export function sheetSvg(sheet: MeasuringSheet, say: (key: string) => string): string {
  const { width, height } = sheet;
  const size = `width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}"`;
  const title = escaped(say('observation.sheet.title'));
  const marks = sheet.marks.map((mark) => drawn(mark, say)).join('');
  return `<svg xmlns="http://www.w3.org/2000/svg" ${size} role="img" aria-label="${title}">${marks}</svg>`;
}

function drawn(mark: SheetMark, say: (key: string) => string): string {
  if (mark.kind === 'line') {
    const [x1, y1, x2, y2] = [...mark.from, ...mark.to].map(short);
    return `<line x1="${x1}" y1="${y1}" x2="${x2}" y2="${y2}" stroke="#000" stroke-width="${mark.weight}"/>`;
  }
  const [x, y] = mark.at.map(short);
  const text = mark.kind === 'number' ? String(mark.number) : escaped(say(`observation.sheet.${mark.say}`));
  const turn = mark.turn === 0 ? '' : ` transform="rotate(${short(mark.turn)} ${x} ${y})"`;
  return `<text x="${x}" y="${y}" font-size="${mark.size}" font-family="sans-serif" text-anchor="middle"${turn}>${text}</text>`;
}

/** A ten-thousandth of a millimetre is enough for any printer. */
function short(value: number): string {
  return String(Math.round(value * 10_000) / 10_000);
}

function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);
}
