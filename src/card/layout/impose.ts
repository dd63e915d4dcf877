import type { Template } from '../template.ts';
import type { CardText } from '../text/card-text.ts';
import type { Page } from './layout-card.ts';
import { type Mark, moved } from './mark.ts';
import { baseline, lineHeight, type Pen, textMark } from './pen.ts';

/** Pages as they go to the printer: several on one sheet with a line to cut along, or a roll with its cut mark. */
export function impose(pages: readonly Page[], template: Template, text: CardText, pen: Pen): readonly Page[] {
  if (template.cut)
    return pages.map((page, index) => (index === pages.length - 1 ? withCut(page, template, text, pen) : page));
  const { sheet } = template;
  if (!sheet) return pages;
  const sheets: Page[] = [];
  for (let start = 0; start < pages.length; start += sheet.across) {
    const each = sheet.width / sheet.across;
    const marks = pages.slice(start, start + sheet.across).flatMap((page, at) => {
      const dx = at * each + (each - page.width) / 2;
      const dy = (sheet.height - page.height) / 2;
      return page.marks.map((mark) => moved(mark, dx, dy));
    });
    const cuts = Array.from({ length: sheet.across - 1 }, (_, at) =>
      cutLine((at + 1) * each, sheet.height, template.hairline),
    );
    sheets.push({ width: sheet.width, height: sheet.height, marks: [...marks, ...cuts] });
  }
  return sheets;
}

const cutLine = (x: number, height: number, weight: number): Mark => ({
  kind: 'line',
  x1: x,
  y1: 5,
  x2: x,
  y2: height - 5,
  weight,
  ink: 'rule',
  stitched: true,
});

function withCut(page: Page, template: Template, text: CardText, pen: Pen): Page {
  const { margins } = template;
  const width = page.width - margins.left - margins.right;
  const step = lineHeight(pen.small);
  const y = page.height - margins.bottom + 3;
  return {
    ...page,
    height: y + step + 1.5 + margins.bottom,
    marks: [
      ...page.marks,
      textMark(pen, text.cut, margins.left, y + baseline(pen.small), { size: pen.small, align: 'middle' }, width),
      {
        kind: 'line',
        x1: margins.left,
        y1: y + step + 1,
        x2: page.width - margins.right,
        y2: y + step + 1,
        weight: 0.4,
        ink: 'ink',
        stitched: true,
      },
    ],
  };
}
