import type { Mark } from './layout/mark.ts';
import { STITCH } from './layout/mark.ts';
import { paintOf } from './paint.ts';

/**
 * Marks as an SVG picture of the same millimetres, for the reading copy. Painted by attributes alone, so that it shows
 * under a content policy without inline styles. Hidden from readers aloud: the sentences beside it say the same.
 */
export function svgOf(marks: readonly Mark[], width: number, height: number): string {
  const inside = marks.map(element).join('');
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${n(width)} ${n(height)}" aria-hidden="true" focusable="false">${inside}</svg>`;
}

const n = (value: number): string => String(Math.round(value * 100) / 100);
const DASH = `stroke-dasharray="${STITCH[0]} ${STITCH[1]}"`;

function element(mark: Mark): string {
  switch (mark.kind) {
    case 'line':
      return `<line x1="${n(mark.x1)}" y1="${n(mark.y1)}" x2="${n(mark.x2)}" y2="${n(mark.y2)}" stroke="${paintOf(mark.ink, 'tag')}" stroke-width="${n(mark.weight)}" ${mark.stitched ? DASH : ''}/>`;
    case 'box':
      return `<rect x="${n(mark.x)}" y="${n(mark.y)}" width="${n(mark.width)}" height="${n(mark.height)}" ${paint(mark)} ${mark.stitched ? DASH : ''}/>`;
    case 'disc':
      return `<circle cx="${n(mark.x)}" cy="${n(mark.y)}" r="${n(mark.r)}" ${paint(mark)}/>`;
    case 'shape': {
      const points = mark.points.map(([x, y]) => `${n(x)},${n(y)}`).join(' ');
      return `<${mark.closed ? 'polygon' : 'polyline'} points="${points}" ${paint(mark)} stroke-linejoin="round"/>`;
    }
    case 'text':
      return `<text x="${n(mark.x)}" y="${n(mark.y)}" font-size="${n((mark.size * 25.4) / 72)}" font-weight="${mark.bold ? 700 : 400}" fill="${paintOf(mark.ink, 'tag')}">${escaped(mark.text)}</text>`;
    case 'code': {
      const squares = mark.rows.flatMap((row, r) =>
        row.flatMap((dark, c) =>
          dark
            ? [
                `M${n(mark.x + c * mark.module)} ${n(mark.y + r * mark.module)}h${n(mark.module)}v${n(mark.module)}h-${n(mark.module)}z`,
              ]
            : [],
        ),
      );
      return `<path fill="#000000" d="${squares.join('')}"/>`;
    }
    case 'drawing':
    case 'logo':
      return '';
  }
}

const paint = (mark: {
  readonly fill?: Parameters<typeof paintOf>[0];
  readonly stroke?: Parameters<typeof paintOf>[0];
  readonly weight?: number;
}): string =>
  `fill="${mark.fill ? paintOf(mark.fill, 'tag') : 'none'}"${mark.stroke ? ` stroke="${paintOf(mark.stroke, 'tag')}" stroke-width="${n(mark.weight ?? 0.3)}"` : ''}`;

/** Text as HTML or SVG text: what it says, whatever it says. */
export const escaped = (text: string): string =>
  text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
