import { BOX_WIDTHS, type Box } from '../stock/shoe.ts';
import type { BoxFit, SizeAdvice } from './advice.ts';
import { BOX_DOUBT, judgeBox, type SizedShoe } from './judge-box.ts';

/** A box this far outside the wanted range still counts as in it: a foot is read to a millimetre. */
const READ_TO = 1;
/** Longest over the wanted room that may still be tried, millimetres: one 5 mm step, so 20 for most adults (published upper end 15 to 20). */
const OVER = 5;

/**
 * How one box stands to the advice.
 *
 * `yes`: the room it leaves is in the wanted range, give or take a millimetre. `maybe`: not below the least room and not
 * over the range by more than 5 mm, each eased by the doubt about foot or box, whichever is greater. `no`: anything
 * else, and a box with nothing on it to judge by. Where the foot is not known every box is a `maybe` with the finding
 * `measure-first`.
 *
 * @example fitBox({ innerLength: 277, … }, shoe, advice for a 265 mm foot) // fits 'yes', off −0.5, by 'inner-length'
 */
export function fitBox(box: Box, shoe: SizedShoe, advice: SizeAdvice): BoxFit {
  const judged = judgeBox(box, shoe);
  if (judged === undefined) {
    return { box, fits: 'no', off: 0, by: 'formula', findings: [{ code: 'nothing-to-judge-by', severity: 'note' }] };
  }
  const { inner, by, doubt, findings } = judged;
  const foot = advice.footLength;
  if (foot === undefined) {
    return {
      box,
      fits: 'maybe',
      off: 0,
      by,
      doubt,
      findings: [{ code: 'measure-first', severity: 'note' }, ...findings],
    };
  }
  const [low, high] = advice.toeRoom;
  const room = inner - foot;
  const ease = Math.max(READ_TO, advice.doubt, doubt);
  const least = advice.leastRoom ?? low;
  const fits =
    room >= low - READ_TO && room <= high + READ_TO
      ? 'yes'
      : room >= least - ease && room <= high + OVER + ease - READ_TO
        ? 'maybe'
        : 'no';
  return { box, fits, off: Math.round((room - (low + high) / 2) * 10) / 10, by, doubt, findings };
}

/** What to bring from one model's boxes. */
export interface Fetch {
  /** The first to fetch, then a second where in doubt. Empty unless `state` is `fetch`. */
  readonly boxes: readonly BoxFit[];
  /** Words: `size.fetch.<state>`. */
  readonly state: 'fetch' | 'not-in-size' | 'sold-out' | 'measure-first';
  /** The first box has one pair left that is not reserved. */
  readonly lastPair: boolean;
  /** For `not-in-size`: the box on hand that comes nearest. */
  readonly nearest?: BoxFit;
}

/**
 * The boxes of one model to fetch, the first first; a second where the first is only a `maybe`, or where the doubt
 * reaches the point at which the second would fit better. Only boxes on hand and not reserved.
 *
 * Better fit comes first, then the width that suits the foot, then the nearest length; of two equally near the longer.
 * The second is of another length. Empty when none fits, and when the foot is not known (see `fetchFrom`).
 *
 * @example boxesToFetch([eu 41, eu 42, eu 43], shoe, advice for a 265 mm foot) // eu 42, then eu 41
 */
export function boxesToFetch(boxes: readonly Box[], shoe: SizedShoe, advice: SizeAdvice): readonly BoxFit[] {
  if (advice.footLength === undefined) return [];
  const fits = boxes
    .filter(isFree)
    .map((box) => fitBox(box, shoe, advice))
    .filter(({ fits }) => fits !== 'no')
    .sort((a, b) => byFit(a, b, advice));
  const [first, ...rest] = fits;
  if (first === undefined) return [];
  const second = rest.filter((other) => isSecond(first, other, advice)).sort((a, b) => byOff(a, b))[0];
  return second === undefined ? [first] : [first, second];
}

/**
 * The same with what to say when there is nothing to fetch: no size known yet, none on hand, or the nearest.
 *
 * @example fetchFrom([], shoe, advice) // { boxes: [], state: 'sold-out', lastPair: false }
 */
export function fetchFrom(boxes: readonly Box[], shoe: SizedShoe, advice: SizeAdvice): Fetch {
  const fetch = boxesToFetch(boxes, shoe, advice);
  const [first] = fetch;
  if (first !== undefined) return { boxes: fetch, state: 'fetch', lastPair: free(first.box) === 1 };
  const onHand = boxes.filter(isFree);
  if (onHand.length === 0) return { boxes: [], state: 'sold-out', lastPair: false };
  if (advice.footLength === undefined) return { boxes: [], state: 'measure-first', lastPair: false };
  const nearest = onHand
    .filter((box) => judgeBox(box, shoe) !== undefined)
    .map((box) => fitBox(box, shoe, advice))
    .sort(byOff)[0];
  return { boxes: [], state: 'not-in-size', lastPair: false, ...(nearest === undefined ? {} : { nearest }) };
}

/** From here on a model is said to run small or large, millimetres: half a 5 mm step. */
const RUNS_FROM = 2.5;

/**
 * Whether a model runs small or large against its labels. No answer where nobody measured it, or it runs true.
 *
 * @example runsOf({ shelf: 'any', sizeOffset: -4 }) // 'small'
 */
export function runsOf(shoe: SizedShoe): 'small' | 'large' | undefined {
  const offset = shoe.sizeOffset ?? 0;
  if (Math.abs(offset) < RUNS_FROM) return undefined;
  return offset < 0 ? 'small' : 'large';
}

function free(box: Box): number {
  return box.onHand - box.reserved;
}
function isFree(box: Box): boolean {
  return free(box) > 0;
}

function byFit(a: BoxFit, b: BoxFit, advice: SizeAdvice): number {
  const rank = (fit: BoxFit) => (fit.fits === 'yes' ? 0 : 1);
  return rank(a) - rank(b) || widthOff(a.box, advice) - widthOff(b.box, advice) || byOff(a, b);
}

/** Nearer first, then longer: a little long can be worn. Ids last, so that the order never depends on the file's. */
function byOff(a: BoxFit, b: BoxFit): number {
  return Math.abs(a.off) - Math.abs(b.off) || b.off - a.off || (a.box.id < b.box.id ? -1 : 1);
}

/** Widths between box and foot; a box or foot of unstated width counts as standard. */
function widthOff(box: Box, advice: SizeAdvice): number {
  const index = (width: Box['width']) => BOX_WIDTHS.indexOf(width ?? 'standard');
  return Math.abs(index(box.width) - index(advice.width?.word));
}

/** A second box worth carrying: another length, no worse in width, and in reach of the doubt. */
function isSecond(first: BoxFit, other: BoxFit, advice: SizeAdvice): boolean {
  if (Math.abs(other.off - first.off) <= READ_TO) return false;
  if (widthOff(other.box, advice) > widthOff(first.box, advice)) return false;
  const doubt = Math.max(advice.doubt, first.doubt ?? BOX_DOUBT[first.by]);
  return first.fits === 'maybe' || Math.abs(first.off + other.off) / 2 <= doubt;
}
