import { checkObservation } from '../observation/check-observation.ts';
import { larger, longerFoot } from '../observation/longer-foot.ts';
import type { Feet, OldPair } from '../observation/observation.ts';
import { questionFeet, usableFeet } from '../observation/question-feet.ts';
import type { Shelf } from '../stock/shoe.ts';
import type { Finding } from '../units/result.ts';
import { tidy } from '../units/tidy.ts';
import type { SizeAdvice } from './advice.ts';
import { alsoLabelled } from './also-labelled.ts';
import { type FootSource, fromBoxLabel, fromFeet, fromInsole, type PrintedSize } from './foot-source.ts';
import { formulaLabels } from './formula-labels.ts';
import { growthOf } from './growth.ts';
import { archOf, bendNotes, feetNotes } from './size-notes.ts';
import { isChild, toeRoom } from './toe-room.ts';
import { widthOf } from './width.ts';

/** Everything a size may rest on. All of it optional; ids are the flow's. */
export interface SizeInput {
  readonly feet?: Feet | undefined;
  readonly oldPair?: OldPair | undefined;
  /** The size printed on today's box, or `not-sure`. */
  readonly nowSize?: PrintedSize | string | undefined;
  /** How that pair feels: `too-short`, `a-bit-short`, `right`, `a-bit-long`, `too-long`, `not-sure`. */
  readonly nowFeel?: string | undefined;
  /** Toe room that the activity asks for, millimetres. */
  readonly activityRoom?: readonly [number, number] | undefined;
  readonly ageBand?: string | undefined;
  readonly shelf?: Shelf | undefined;
  /** What goes inside the shoe; `heel-lift` and `prosthesis` count here. A health answer: no note tells of it. */
  readonly inside?: readonly string[] | undefined;
}

/** A whole UK size: the old pair and the measured foot differ by more than anyone's reading. */
const OLD_SIZE_DIFFERS = 8.5;

/**
 * What size to fetch, and how sure that is.
 *
 * Rests on both feet where measured (the longer decides), else on the insole of the old pair, else on the size on
 * today's box and how it feels, else on nothing: then `from` is `none`, and nobody is sized from age or shelf alone.
 * Numbers that cannot be are left out with a finding each; the rest still counts.
 *
 * @example sizeAdvice({ feet: { left: { length: 262 }, right: { length: 265 }, posture: 'standing', sock: 'worn-sock' } })
 * // from 'measured', footLength 265, doubt 1, toeRoom [10, 15], innerLength [275, 280], labels.eu '42'
 */
export function sizeAdvice(input: SizeInput): SizeAdvice {
  const { ageBand, shelf = 'any', inside = [] } = input;
  const uneven = inside.includes('heel-lift') || inside.includes('prosthesis');
  const child = isChild(ageBand, shelf);
  const seen = usable(input, uneven);
  const source = sourceOf(input, seen, child);
  const { room, least } = toeRoom(input.activityRoom, ageBand, shelf);
  const base = { doubt: source?.doubt ?? 0, toeRoom: room, leastRoom: least };
  const growth = child ? growthOf(room, ageBand, source?.length) : undefined;
  const findings = [
    ...seen.findings,
    ...(seen.feet === undefined ? [] : feetNotes(seen.feet, uneven)),
    ...(seen.feet === undefined ? [] : bendNotes(seen.feet)),
    ...sourceNotes(input, source, child),
    ...(growth === undefined || source === undefined ? [] : [note('measure-again', { count: growth.nextCheck })]),
  ];
  if (source === undefined) return { from: 'none', ...base, ...optional({ growth }), findings };
  const foot = source.length;
  return {
    from: source.from,
    footLength: foot,
    ...base,
    innerLength: [tidy(foot + room[0]), tidy(foot + room[1])],
    labels: formulaLabels(foot),
    also: alsoLabelled(foot),
    ...optional({ growth, ...measuredDetail(seen.feet, child ? 'junior' : shelf) }),
    findings,
  };
}

/** What of the observation can be used, and what was odd about the rest. */
function usable(input: SizeInput, uneven: boolean) {
  const { value, findings } = checkObservation({ ...optional({ feet: input.feet, oldPair: input.oldPair }) });
  const feet = value?.feet;
  if (feet === undefined) return { oldPair: value?.oldPair, feet, findings };
  const odd = questionFeet(feet, input.shelf).filter(({ code }) => !(uneven && code === 'feet-far-apart'));
  return { oldPair: value?.oldPair, feet: usableFeet(feet, odd), findings: [...findings, ...odd] };
}

type Seen = ReturnType<typeof usable>;

function sourceOf(input: SizeInput, seen: Seen, child: boolean): FootSource | undefined {
  return (
    fromFeet(seen.feet) ?? fromInsole(seen.oldPair, input.nowFeel) ?? fromBoxLabel(input.nowSize, input.nowFeel, child)
  );
}

function sourceNotes(input: SizeInput, source: FootSource | undefined, child: boolean): readonly Finding[] {
  if (source === undefined) return [note(child ? 'measure-child-first' : 'measure-first')];
  if (source.from === 'insole') return [note('from-insole')];
  const box = fromBoxLabel(input.nowSize, input.nowFeel, child);
  if (source.from === 'measured') {
    const apart = box === undefined ? 0 : Math.abs(box.length - source.length);
    return apart > OLD_SIZE_DIFFERS ? [note('old-size-differs')] : [];
  }
  return [
    note(child ? 'child-may-not-feel' : 'from-box'),
    ...(typeof input.nowSize === 'object' && input.nowSize.unit === 'us-women' ? [note('us-women-two-scales')] : []),
  ];
}

/** Bench detail that rests on measured feet alone. Width takes the longer length and the larger girth or breadth. */
function measuredDetail(feet: Feet | undefined, shelf: Shelf) {
  const longer = feet === undefined ? undefined : longerFoot(feet);
  if (feet === undefined || longer === undefined) return {};
  return {
    difference: longer.difference,
    width: widthOf(longer.length, { girth: larger(feet, 'ballGirth'), breadth: larger(feet, 'width') }, shelf),
    archDifference: archOf(feet),
  };
}

function note(code: string, data?: Finding['data']): Finding {
  return { code, severity: 'note', ...(data === undefined ? {} : { data }) };
}

/** Leaves absent values out, rather than writing them as undefined. */
function optional<T extends object>(values: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>;
  };
}
