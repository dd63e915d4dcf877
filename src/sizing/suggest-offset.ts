import { BARLEYCORN } from '../units/length.ts';

/** How a box felt that was fetched by its label for a measured foot. */
export type SizeFelt = 'too-small' | 'right' | 'too-big';

/** What the shop's try-ons of one model add up to: first boxes only, no visit, no person. */
export interface SizeTally {
  readonly shoe: string;
  readonly tooSmall: number;
  readonly right: number;
  readonly tooBig: number;
}

/** An offset for the shop to consider: how the model seems to run against its labels. It changes nothing by itself. */
export interface OffsetSuggestion {
  readonly shoe: string;
  readonly runs: 'small' | 'large';
  /** Millimetres of inner length against its labels, to stand in place of the present one; + runs large. */
  readonly offset: number;
  /** Notes for it, and of all. */
  readonly notes: number;
  readonly of: number;
}

/** Notes of one direction that are worth telling the shop; fewer are chance (common practice). */
const NOTES_WANTED = 3;
/** A note says no more than "the next box": half a UK size. */
const STEP = BARLEYCORN / 2;

/**
 * Counts a visit's try-ons: for each model the first box's note, since a bigger box that then fits says the same again.
 *
 * @example
 * sizeTallies([{ shoe: 'tern', size: 'too-small' }, { shoe: 'tern', size: 'right' }])
 * // [{ shoe: 'tern', tooSmall: 1, right: 0, tooBig: 0 }]
 */
export function sizeTallies(
  tried: readonly { readonly shoe: string; readonly size?: SizeFelt | undefined }[],
): readonly SizeTally[] {
  const first = new Map<string, SizeFelt | undefined>();
  for (const { shoe, size } of tried) if (!first.has(shoe)) first.set(shoe, size);
  return [...first].flatMap(([shoe, size]) => (size === undefined ? [] : [tallyOf(shoe, [size])]));
}

/** The sums of several visits, one for each model, in order of their ids. */
export function addTallies(tallies: readonly SizeTally[]): readonly SizeTally[] {
  const sums = new Map<string, SizeTally>();
  for (const { shoe, tooSmall, right, tooBig } of tallies) {
    const sum = sums.get(shoe) ?? tallyOf(shoe, []);
    sums.set(shoe, {
      shoe,
      tooSmall: sum.tooSmall + tooSmall,
      right: sum.right + right,
      tooBig: sum.tooBig + tooBig,
    });
  }
  return [...sums.values()].sort((a, b) => (a.shoe < b.shoe ? -1 : 1));
}

/**
 * The offset that notes of a wrong size suggest for a model: three of one direction, and more of them than of all
 * other notes together. No answer otherwise. Half a UK size at a time, on top of the offset it has.
 *
 * @example
 * suggestOffset({ shoe: 'tern', tooSmall: 3, right: 1, tooBig: 0 }, undefined)
 * // { shoe: 'tern', runs: 'small', offset: -4.2, notes: 3, of: 4 }
 */
export function suggestOffset(tally: SizeTally, present: number | undefined): OffsetSuggestion | undefined {
  const { shoe, tooSmall, right, tooBig } = tally;
  const of = tooSmall + right + tooBig;
  const runs = tooSmall > tooBig ? 'small' : 'large';
  const notes = Math.max(tooSmall, tooBig);
  if (notes < NOTES_WANTED || notes <= of - notes) return undefined;
  const offset = (present ?? 0) + (runs === 'small' ? -STEP : STEP);
  return { shoe, runs, offset: Math.round(offset * 10) / 10, notes, of };
}

function tallyOf(shoe: string, sizes: readonly SizeFelt[]): SizeTally {
  const count = (felt: SizeFelt) => sizes.filter((size) => size === felt).length;
  return { shoe, tooSmall: count('too-small'), right: count('right'), tooBig: count('too-big') };
}
