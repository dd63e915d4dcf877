import type { Measure } from '../font/metrics.ts';
import { printableAll } from '../font/printable.ts';
import type { BlockRow, Template } from '../template.ts';
import type { CardText } from '../text/card-text.ts';
import { block } from './blocks/block.ts';
import { seam, stubBack, stubBackHeight, stubFront } from './blocks/stub.ts';
import { type Flowed, type Frame, flowPieces } from './flow-pieces.ts';
import { impose } from './impose.ts';
import { type Mark, moved as shifted } from './mark.ts';
import { baseline, lineHeight, type Pen, penOf, textMark } from './pen.ts';
import type { Piece } from './piece.ts';

/** A card laid out: pages of marks, ready for any printer. Millimetres. */
export interface Sheets {
  readonly pages: readonly Page[];
  /** Characters the font lacks, each replaced by `MISSING_MARK`. */
  readonly missing: readonly string[];
  readonly ink: Template['ink'];
}
export interface Page {
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
}

/** Between the seam and what follows it. */
const SEAM_GAP = 2.5;

/**
 * Lays a card out on a template's pages.
 *
 * To keep each side on its page the type shrinks first, then, on the first side, the rows that may get shorter do, last
 * row first. What still does not fit goes on to a further page: nothing that must be shown is ever left out or cut.
 */
export function layoutCard(text: CardText, template: Template, measure: Measure): Sheets {
  const { page: pageSays, ...plain } = text;
  const { tree, missing } = printableAll(plain, measure);
  const safe: CardText = { ...tree, code: text.code, ...logoOf(text, tree), page: pageSays };
  const pages = layoutPages(safe, template, (body) => penOf(template, measure, body));
  const pen = penOf(template, measure, template.type.small);
  return { pages: impose(pages, template, safe, pen), missing, ink: template.ink };
}

/** A logo is a drawing, not text: its characters are left alone. */
function logoOf(text: CardText, tree: { readonly head: CardText['head'] }): Pick<CardText, 'head'> {
  return { head: { ...tree.head, ...(text.head.logo ? { logo: text.head.logo } : {}) } };
}

interface Try {
  readonly body: number;
  readonly rows: readonly BlockRow[];
}

/** Ways to fit a side on its page, mildest first: type, then rows. The first so many change the type alone. */
function triesOf(bodies: readonly number[], side: readonly BlockRow[]): readonly Try[] {
  const smallest = bodies.at(-1) ?? 9;
  const tries: Try[] = bodies.map((body) => ({ body, rows: side }));
  let rows = side;
  // One step from each row that may get shorter, the last row first, round and round.
  for (let shrunk = true; shrunk; ) {
    shrunk = false;
    for (let at = side.length - 1; at >= 0; at--) {
      const row = rows[at];
      if (row?.most === undefined || row.least === undefined || row.most <= row.least) continue;
      const less = { ...row, most: row.most - 1 };
      rows = rows.map((each, index) => (index === at ? less : each));
      tries.push({ body: smallest, rows });
      shrunk = true;
    }
  }
  return tries;
}

function layoutPages(text: CardText, template: Template, penFor: (body: number) => Pen): readonly Page[] {
  const { page, margins, type } = template;
  const width = page.width - margins.left - margins.right;
  const small = penFor(type.body.at(-1) ?? 9);
  const stub = template.stub ? stubOf(text, small, width, template) : undefined;
  const foot = page.height === 'auto' ? 0 : lineHeight(small.small) + 1;
  const frames = (index: number): Frame => ({
    top: stub && index < 2 ? margins.top + stub.height + SEAM_GAP : margins.top,
    bottom: page.height === 'auto' ? Number.POSITIVE_INFINITY : page.height - margins.bottom - foot,
  });
  // Only a card with pairs fills a side of its own; any other runs on.
  const sides = text.lineUps.some((lineUp) => lineUp.pairs.length > 0)
    ? template.sides
    : [{ blocks: template.sides.flatMap((side) => side.blocks) }];

  const placed: Flowed['placed'][number][] = [];
  let at = { page: 0, y: frames(0).top };
  let moved: readonly BlockRow[] = [];
  for (const [index, side] of sides.entries()) {
    // A side that spilled over goes on straight into what the next one says.
    if (index > 0 && at.page === index - 1) at = { page: index, y: frames(index).top };
    const flow = (attempt: Try) => {
      const pen = penFor(attempt.body);
      const pieces = attempt.rows.flatMap((row) => block(row, text, pen, width, template));
      return flowPieces(pieces, frames, at.page, at.y);
    };
    const rows = side.blocks.filter((row) => !moved.includes(row));
    let best = bestOf(triesOf(type.body, rows), type.body.length, index, flow);
    moved = [];
    for (const early of sides[index + 1]?.blocks.filter((row) => row.early) ?? []) {
      const longer = { ...best.attempt, rows: [...best.attempt.rows, early] };
      const flowed = flow(longer);
      if (best.flowed.lastPage > index || flowed.lastPage > index) continue;
      best = { attempt: longer, flowed };
      moved = [...moved, early];
    }
    placed.push(...best.flowed.placed);
    at = { page: best.flowed.lastPage, y: best.flowed.y };
  }
  return Array.from({ length: at.page + 1 }, (_, index): Page => {
    const marks = placed.filter((each) => each.page === index).flatMap((each) => each.marks);
    const tag =
      stub && index < 2
        ? stubMarks(index === 0 ? stub : stubBack(text, small, width, stub.height, template), width)
        : [];
    return {
      width: page.width,
      height: page.height === 'auto' ? at.y + margins.bottom : page.height,
      marks: [
        ...tag.map((mark) => shifted(mark, margins.left, margins.top)),
        ...marks.map((mark) => shifted(mark, margins.left, 0)),
        ...(foot > 0 ? [footLine(text, small, template, index, at.page)] : []),
      ],
    };
  });
}

/** The first try that ends on the wanted page; failing that, the fewest pages with nothing left out. */
function bestOf(tries: readonly Try[], typeTries: number, wanted: number, flow: (attempt: Try) => Flowed): Tried {
  let whole: Tried | undefined;
  for (const [index, attempt] of tries.entries()) {
    const flowed = flow(attempt);
    if (flowed.lastPage <= wanted) return { attempt, flowed };
    const fewer = flowed.lastPage < (whole?.flowed.lastPage ?? Number.POSITIVE_INFINITY);
    if (index < typeTries && fewer) whole = { attempt, flowed };
  }
  if (!whole) throw new Error('A template has at least one type size');
  return whole;
}

interface Tried {
  readonly attempt: Try;
  readonly flowed: Flowed;
}

/** Front and back are torn off together, so the taller of them says how high the stub is. */
function stubOf(text: CardText, pen: Pen, width: number, template: Template): Piece {
  const least = stubBackHeight(text, pen, width, template);
  return stubFront(text, pen, width, template, least);
}

const stubMarks = (stub: Piece, width: number): readonly Mark[] => [...stub.marks, seam(width, stub.height)];

function footLine(text: CardText, pen: Pen, template: Template, index: number, last: number): Mark {
  const { page, margins } = template;
  const height = page.height === 'auto' ? 0 : page.height;
  const y = height - margins.bottom - lineHeight(pen.small) + baseline(pen.small);
  const width = page.width - margins.left - margins.right;
  return textMark(
    pen,
    text.page(index + 1, last + 1),
    margins.left,
    y,
    { size: pen.small, ink: 'soft', align: 'end' },
    width,
  );
}
