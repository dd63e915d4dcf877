import type { Page } from '../../src/card/layout/layout-card.ts';
import { extent, type Mark, type TextMark } from '../../src/card/layout/mark.ts';
import type { Template } from '../../src/card/template.ts';

/** What is wrong with where the marks of a page stand: over the margin, or one line of text over another. */
export function misplaced(page: Page, { margins, sheet }: Pick<Template, 'margins' | 'sheet'>): readonly string[] {
  // The line to cut two pages apart stands between them, not on either.
  const marks = page.marks.filter((mark) => !(sheet && mark.kind === 'line' && mark.ink === 'rule' && mark.stitched));
  const slack = 0.05;
  const outside = marks.filter((mark) => {
    const { left, top, right, bottom } = extent(mark);
    return (
      left < margins.left - slack ||
      right > page.width - margins.right + slack ||
      top < margins.top - slack ||
      bottom > page.height - margins.bottom + slack
    );
  });
  return [...outside.map((mark) => `outside: ${name(mark)}`), ...overlapping(marks)];
}

const name = (mark: Mark): string => (mark.kind === 'text' ? mark.text : JSON.stringify(mark).slice(0, 120));

/** Text over text, or text over the square code, by more than a third of a millimetre both ways. */
function overlapping(marks: readonly Mark[]): readonly string[] {
  const texts = marks.filter((mark): mark is TextMark => mark.kind === 'text');
  const codes = marks.filter((mark) => mark.kind === 'code' || mark.kind === 'drawing' || mark.kind === 'logo');
  const boxes = [...texts, ...codes].map((mark) => ({ mark, ...extent(mark) })).sort((a, b) => a.top - b.top);
  const found: string[] = [];
  for (const [i, a] of boxes.entries()) {
    for (const b of boxes.slice(i + 1)) {
      if (b.top > a.bottom) break;
      const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
      const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
      if (across > 0.3 && down > 0.3) found.push(`over: ${name(a.mark)} / ${name(b.mark)}`);
    }
  }
  return found;
}
