import { footFromInsole } from '../observation/insole.ts';
import { longerFoot } from '../observation/longer-foot.ts';
import { MEASURE_RANGES } from '../observation/measure-ranges.ts';
import type { Feet, OldPair } from '../observation/observation.ts';
import { tidy } from '../units/tidy.ts';
import { SYSTEMS } from './systems/systems.ts';

/** A foot's length, what it rests on and how far it may be out, millimetres. */
export interface FootSource {
  readonly from: 'measured' | 'insole' | 'box-label';
  readonly length: number;
  readonly doubt: number;
}

/** A size as printed on a box: `{ value: 42, unit: 'eu' }`; the unit is a label system, or `mm`. */
export interface PrintedSize {
  readonly value: number;
  readonly unit: string;
}

/** A foot gauge is read to a millimetre (common practice). */
const GAUGE = 1;
/**
 * Doubt from how the foot stood. From no load to two feet a foot of a person 1.7 m tall lengthens 2.7 mm, and 0.8 mm
 * more on one foot of a woman 1.6 m tall (Xiong 2009, per cent of stature): a seated foot reads short by up to that.
 */
const POSTURE_DOUBT: Readonly<Record<Feet['posture'], number>> = { standing: 0, seated: 2.7, 'one-foot': 0.8 };
/** A sock's thickness at heel and toe, where it was not the one to be worn (common practice). */
const SOCK_DOUBT: Readonly<Record<Feet['sock'], number>> = { 'worn-sock': 0, 'thin-sock': 0.5, barefoot: 1 };
/** The foot that was not measured may be the longer: up to 19 % of people differ by more than 4 mm. */
const OTHER_FOOT = 4;

/** The longer measured foot. No answer when no length was measured. */
export function fromFeet(feet: Feet | undefined): FootSource | undefined {
  const longer = feet === undefined ? undefined : longerFoot(feet);
  if (feet === undefined || longer === undefined) return undefined;
  const other = longer.difference === undefined ? OTHER_FOOT : 0;
  const doubt = tidy(GAUGE + POSTURE_DOUBT[feet.posture] + SOCK_DOUBT[feet.sock] + other);
  return { from: 'measured', length: longer.length, doubt };
}

/** What "too short" and the rest come to, millimetres of foot: half a UK size (4.2) and a whole one (8.5), common practice. */
const FEEL: Readonly<Record<string, { readonly shift: number; readonly doubt: number }>> = {
  'too-short': { shift: 8.5, doubt: 7 },
  'a-bit-short': { shift: 4.2, doubt: 5 },
  right: { shift: 0, doubt: 5 },
  'a-bit-long': { shift: -4.2, doubt: 5 },
  'too-long': { shift: -8.5, doubt: 7 },
};
/** Nobody said how it feels: 63 to 72 % wear a wrong size (Buldt and Menz 2018), so a whole size either way. */
const NO_FEEL = { shift: 0, doubt: 8.5 };

/** The foot from the old pair's insole; how the pair feels counts only where no toe print was seen. */
export function fromInsole(pair: OldPair | undefined, feel: string | undefined): FootSource | undefined {
  const insole = pair === undefined ? undefined : footFromInsole(pair);
  if (insole === undefined) return undefined;
  const shift = pair?.toePrintGap === undefined ? (FEEL[feel ?? ''] ?? NO_FEEL).shift : 0;
  return plausible({ from: 'insole', length: tidy(insole.length + shift), doubt: insole.doubt });
}

/** US women's labels come at two offsets half a size apart; today's maker is not asked. */
const WOMEN_DOUBT = 2.1;
/** Children call too-short shoes right: over 90 % of six to ten year olds did (reported with Kinz 2015). */
const CHILD_DOUBT = 3;

/**
 * The foot from the size on today's box and how it feels, with its wide doubt. No answer for a size that is not in its
 * system, and when the size is not known.
 *
 * @example fromBoxLabel({ value: 42, unit: 'eu' }, 'a-bit-short', false) // length 270.9, doubt 5
 */
export function fromBoxLabel(
  size: PrintedSize | string | undefined,
  feel: string | undefined,
  child: boolean,
): FootSource | undefined {
  if (size === undefined || typeof size === 'string') return undefined;
  const length = footOfPrintedSize(size);
  if (length === undefined) return undefined;
  const { shift, doubt } = FEEL[feel ?? ''] ?? NO_FEEL;
  const wider = (size.unit === 'us-women' ? WOMEN_DOUBT : 0) + (child ? CHILD_DOUBT : 0);
  return plausible({ from: 'box-label', length: Math.round((length + shift) * 10) / 10, doubt: tidy(doubt + wider) });
}

/** The foot that a printed size is meant for, millimetres. No answer for a unit that is no size. */
export function footOfPrintedSize({ value, unit }: PrintedSize): number | undefined {
  const id = unit === 'mm' ? 'mondopoint' : unit;
  const system = Object.hasOwn(SYSTEMS, id) ? SYSTEMS[id as keyof typeof SYSTEMS] : undefined;
  return system === undefined || !Number.isFinite(value) ? undefined : system.foot(value);
}

function plausible(source: FootSource): FootSource | undefined {
  const [from, to] = MEASURE_RANGES.length;
  return source.length >= from && source.length <= to ? source : undefined;
}
