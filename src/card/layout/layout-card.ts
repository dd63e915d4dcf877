import type { Measure } from '../font/metrics.ts';
import { printableAll } from '../font/printable.ts';
import type { BlockRow, Side, Template } from '../template.ts';
import type { CardText } from '../text/card-text.ts';
import { block } from './blocks/block.ts';
import { seam, stubBack, stubBackHeight, stubFront } from './blocks/stub.ts';
import { columnWidth, type FlowedSide, type Frame, flowSide, type Place } from './flow-side.ts';
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
 * To keep to one page for each side the type shrinks first, then the rows that may get shorter do, last row first, and
 * only where that saves a page. What still does not fit goes on to a further page: nothing that must be shown is ever
 * left out or cut.
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

/** One way to set the whole card: a type size, and the rows of each side as short as they are at this try. */
interface Try {
  readonly body: number;
  readonly sides: readonly Side[];
}
interface Tried {
  readonly placed: FlowedSide['placed'];
  readonly end: Place;
  /** How many sides run over on to the next page. */
  readonly over: number;
}

/**
 * Ways to set a card on fewer pages, mildest first: smaller type, then one item less of each row that allows it, the
 * last row of a side first, round and round, and one side after the other.
 */
function triesOf(bodies: readonly number[], sides: readonly Side[]): readonly Try[] {
  const body = bodies.at(-1) ?? 9;
  const tries: Try[] = bodies.map((each) => ({ body: each, sides }));
  let now = sides;
  for (const [s, { blocks }] of sides.entries()) {
    for (let before = -1; before < tries.length; ) {
      before = tries.length;
      for (let b = blocks.length - 1; b >= 0; b--) {
        const row = now[s]?.blocks[b];
        if (row?.most === undefined || row.least === undefined || row.most <= row.least) continue;
        now = now.map((side, index) => (index === s ? { ...side, blocks: side.blocks.with(b, shorter(row)) } : side));
        tries.push({ body, sides: now });
      }
    }
  }
  return tries;
}

const shorter = (row: BlockRow): BlockRow => ({ ...row, most: (row.most ?? 1) - 1 });

function layoutPages(text: CardText, template: Template, penFor: (body: number) => Pen): readonly Page[] {
  const { page, margins, type } = template;
  const width = page.width - margins.left - margins.right;
  const small = penFor(type.body.at(-1) ?? 9);
  const stub = stubOf(text, small, width, template);
  const foot = page.height === 'auto' ? 0 : lineHeight(small.small) + 1;
  const frames = (index: number): Frame => ({
    top: margins.top + (stub[index] ? stub[index].height + SEAM_GAP : 0),
    bottom: page.height === 'auto' ? Number.POSITIVE_INFINITY : page.height - margins.bottom - foot,
  });
  // A card without pairs should do with one page. A fitter's copy is not torn, so that its sides run on too.
  const pairs = text.lineUps.some((lineUp) => lineUp.pairs.length > 0);
  const apart = pairs && text.copy === 'customer';
  const best = bestOf(triesOf(type.body, template.sides), pairs ? template.sides.length : 1, (attempt) =>
    setCard(attempt, text, template, penFor(attempt.body), width, frames, apart),
  );
  const last = best.end.page;
  return Array.from({ length: last + 1 }, (_, index): Page => {
    const marks = best.placed.filter((each) => each.page === index).flatMap((each) => each.marks);
    const tag = stub[index] ? stubMarks(stub[index], width) : [];
    return {
      width: page.width,
      height: page.height === 'auto' ? best.end.y + margins.bottom : page.height,
      marks: [
        ...tag.map((mark) => shifted(mark, margins.left, margins.top)),
        ...marks.map((mark) => shifted(mark, margins.left, 0)),
        ...(foot > 0 ? [footLine(text, small, template, index, last)] : []),
      ],
    };
  });
}

/**
 * The mildest try that keeps each side to its own page; failing that, of those with the fewest pages the one with the
 * fewest sides that run over.
 */
function bestOf(tries: readonly Try[], wanted: number, set: (attempt: Try) => Tried): Tried {
  let best: Tried | undefined;
  for (const attempt of tries) {
    const tried = set(attempt);
    if (tried.end.page < wanted && tried.over === 0) return tried;
    const fewer = tried.end.page - (best?.end.page ?? Number.POSITIVE_INFINITY);
    if (!best || fewer < 0 || (fewer === 0 && tried.over < best.over)) best = tried;
  }
  if (!best) throw new Error('A template has at least one type size');
  return best;
}

/** Sets the sides one after the other, each on a page of its own where they stand `apart`. Blocks of the next side that may stand early fill up what this one left. */
function setCard(
  { sides }: Try,
  text: CardText,
  template: Template,
  pen: Pen,
  width: number,
  frames: (page: number) => Frame,
  apart: boolean,
): Tried {
  const placed: FlowedSide['placed'][number][] = [];
  let end: Place = { page: 0, y: frames(0).top };
  let over = 0;
  let moved: readonly BlockRow[] = [];
  const flow = (rows: readonly BlockRow[], columns: number): FlowedSide => {
    const room = columnWidth(columns, width);
    return flowSide(
      rows.flatMap((row) => block(row, text, pen, room, template)),
      end,
      frames,
      columns,
      width,
    );
  };
  for (const [index, side] of sides.entries()) {
    // A side that spilled over goes on straight into what the next one says.
    if (apart && index > 0 && end.page === index - 1) end = { page: index, y: frames(index).top };
    const flowed = flow(
      side.blocks.filter((row) => !moved.includes(row)),
      side.columns ?? 1,
    );
    placed.push(...flowed.placed);
    end = flowed.end;
    if (apart && end.page > index) over++;
    moved = [];
    for (const early of apart ? (sides[index + 1]?.blocks ?? []).filter((row) => row.early) : []) {
      const more = flow([early], 1);
      if (end.page > index || more.end.page > index) continue;
      placed.push(...more.placed);
      end = more.end;
      moved = [...moved, early];
    }
  }
  return { placed, end, over };
}

/** Lines to write on, on the back of a fitter's own copy. */
const FITTERS_LINES = 2;

/**
 * The fitter's part, front and back. They are torn off a customer's card together, so the taller of them says how high
 * both are; a fitter's own copy is not torn, and neither is higher than what stands on it. Once a pair is chosen there
 * is nothing left to try, and what would be written by hand is printed: its back is plain.
 */
function stubOf(text: CardText, pen: Pen, width: number, template: Template): readonly Piece[] {
  if (!template.stub) return [];
  const fitters = text.copy === 'fitter';
  const back = stubBackHeight(text, pen, width, template, fitters ? FITTERS_LINES : 1);
  const front = stubFront(text, pen, width, template, fitters ? 0 : back);
  if (text.bench && text.bench.decision.items.length > 0 && text.tasks.gentle.length === 0) return [front];
  return [front, stubBack(text, pen, width, fitters ? back : front.height, template)];
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
