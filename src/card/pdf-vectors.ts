import type { CanvasElement } from 'pdfmake/interfaces';
import { type CodeMark, type Ink, type Mark, POINT, STITCH } from './layout/mark.ts';
import { paintOf } from './paint.ts';
import type { Template } from './template.ts';

const pt = (mm: number): number => Math.round((mm / POINT) * 1000) / 1000;
const dash = { length: pt(STITCH[0]), space: pt(STITCH[1]) };

/** Marks that are not text, as pdfmake canvas elements, in the order drawn. */
export function vectorsOf(marks: readonly Mark[], kind: Template['ink']): CanvasElement[] {
  return marks.flatMap((mark) => vectorOf(mark, kind));
}

function vectorOf(mark: Mark, kind: Template['ink']): CanvasElement[] {
  if ('fill' in mark && !mark.stroke && mark.fill && !paintOf(mark.fill, kind)) return [];
  switch (mark.kind) {
    case 'line':
      return [
        {
          type: 'line',
          x1: pt(mark.x1),
          y1: pt(mark.y1),
          x2: pt(mark.x2),
          y2: pt(mark.y2),
          lineWidth: pt(mark.weight),
          lineColor: paintOf(mark.ink, kind) ?? '#000000',
          ...(mark.stitched ? { dash } : {}),
        },
      ];
    case 'box':
      return [
        {
          type: 'rect',
          x: pt(mark.x),
          y: pt(mark.y),
          w: pt(mark.width),
          h: pt(mark.height),
          ...strokeAndFill(mark, kind),
          ...(mark.stitched ? { dash } : {}),
        },
      ];
    case 'disc':
      return [
        {
          type: 'ellipse',
          x: pt(mark.x),
          y: pt(mark.y),
          r1: pt(mark.r),
          r2: pt(mark.r),
          ...strokeAndFill(mark, kind),
        },
      ];
    case 'shape':
      return [
        {
          type: 'polyline',
          closePath: mark.closed,
          points: mark.points.map(([x, y]) => ({ x: pt(x), y: pt(y) })),
          lineCap: 'round',
          lineJoin: 'round',
          ...strokeAndFill(mark, kind),
        } as CanvasElement,
      ];
    case 'code':
      return [codePath(mark)];
    case 'text':
    case 'drawing':
    case 'logo':
      return [];
  }
}

function strokeAndFill(
  mark: { readonly fill?: Ink; readonly stroke?: Ink; readonly weight?: number },
  kind: Template['ink'],
): { lineWidth?: number; lineColor?: string; color?: string } {
  const fill = mark.fill && paintOf(mark.fill, kind);
  const stroke = mark.stroke && paintOf(mark.stroke, kind);
  return {
    ...(stroke ? { lineColor: stroke, lineWidth: pt(mark.weight ?? 0.3) } : { lineWidth: 0 }),
    ...(fill ? { color: fill } : {}),
  };
}

/** The whole code as one filled path, so that no hair of light shows between its squares at any magnification. */
function codePath({ x, y, module, rows }: CodeMark): CanvasElement {
  const d = rows
    .flatMap((row, r) =>
      runs(row).map(
        ([from, to]) =>
          `M${pt(x + from * module)} ${pt(y + r * module)}h${pt((to - from) * module)}v${pt(module)}h${pt((from - to) * module)}z`,
      ),
    )
    .join('');
  return { type: 'path', d, color: '#000000', lineWidth: 0 } as unknown as CanvasElement;
}

/** Stretches of dark squares in a row, as from and to. */
function runs(row: readonly boolean[]): readonly (readonly [number, number])[] {
  const found: [number, number][] = [];
  row.forEach((dark, at) => {
    const last = found.at(-1);
    if (!dark) return;
    if (last && last[1] === at) last[1] = at + 1;
    else found.push([at, at + 1]);
  });
  return found;
}
