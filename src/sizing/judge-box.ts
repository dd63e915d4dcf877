import { type Box, LABEL_SYSTEMS, type LabelSystem, type Shelf } from '../stock/shoe.ts';
import type { Finding } from '../units/result.ts';
import type { BoxFit } from './advice.ts';
import { SYSTEMS } from './systems/systems.ts';
import { US_WOMEN_DEFAULT } from './systems/us-women.ts';
import { ADULT_ROOM } from './toe-room.ts';

/** What sizing wants to know of a model. */
export interface SizedShoe {
  readonly shelf: Shelf;
  /** Millimetres of inner length against its labels; + runs large. */
  readonly sizeOffset?: number;
  /** US women's label minus US men's, as this maker does it. Never inferred. */
  readonly usWomenOffset?: number;
}

/** How long a box is inside, what says so, and how far it may be out, millimetres. */
export interface Judged {
  readonly inner: number;
  readonly by: BoxFit['by'];
  readonly doubt: number;
  readonly findings: readonly Finding[];
}

/**
 * Half-width of what is left in doubt, millimetres. A stated inner length is read to a millimetre; a marked foot length
 * and a known offset leave half a 5 mm step (common practice); formulas differ by 0.54 EU, 3.6 mm, between foot and last.
 */
export const BOX_DOUBT: Readonly<Record<BoxFit['by'], number>> = {
  'inner-length': 1,
  mondopoint: 2.5,
  'label-with-offset': 2.5,
  formula: 3.6,
};
/** US women's sizes come at two offsets half a size, 4.2 mm, apart: half of that more where the model's is not known. */
const WOMEN_DOUBT = 2.1;
/** A centimetre mark this far beyond the foot its other labels stand for is the last's length: lasts add 13 mm or more. */
const LAST_NOT_FOOT = 10;
/** Labels of one box that stand for feet a whole UK size apart contradict each other. */
const LABELS_APART = 8.5;
/**
 * A label promises a foot, not a length inside. What it is taken to add is the middle of the adults' toe room, so that
 * with ordinary toe room the formula's own size is the one that fits.
 */
export const LABEL_ROOM = (ADULT_ROOM[0] + ADULT_ROOM[1]) / 2;

/**
 * How long a box is inside: its stated inner length, else its Mondopoint or centimetre mark, else its labels with the
 * model's known offset, else its labels by formula. Several labels count by the middle of what they say.
 *
 * No answer when nothing on the box can be read. Labels are never converted for display.
 *
 * @example judgeBox({ labels: { eu: '42', uk: '8' }, … }, { shelf: 'any' }) // inner 277.07, by 'formula', doubt 3.6
 */
export function judgeBox(box: Pick<Box, 'labels' | 'innerLength'>, shoe: SizedShoe): Judged | undefined {
  if (box.innerLength !== undefined) {
    return { inner: box.innerLength, by: 'inner-length', doubt: BOX_DOUBT['inner-length'], findings: [] };
  }
  const offset = shoe.sizeOffset ?? 0;
  const labels = byLabels(box, shoe);
  const mondopoint = footOfLabel('mondopoint', box.labels.mondopoint);
  const cm = footOfLabel('cm', box.labels.cm);
  const cmIsLast = cm !== undefined && labels !== undefined && cm - labels.foot >= LAST_NOT_FOOT;
  const marked = mondopoint ?? (cmIsLast ? undefined : cm);
  const findings: Finding[] =
    cmIsLast && mondopoint === undefined ? [{ code: 'cm-may-be-last', severity: 'note' }] : [];
  if (marked !== undefined) {
    return { inner: marked + LABEL_ROOM + offset, by: 'mondopoint', doubt: BOX_DOUBT.mondopoint, findings };
  }
  if (labels === undefined) return undefined;
  const by = shoe.sizeOffset === undefined ? 'formula' : 'label-with-offset';
  if (labels.spread >= LABELS_APART) findings.push({ code: 'labels-disagree', severity: 'note' });
  return { inner: labels.foot + LABEL_ROOM + offset, by, doubt: labels.doubt + BOX_DOUBT[by], findings };
}

/** The foot that a box's converted labels stand for, and how far apart they are. */
function byLabels(box: Pick<Box, 'labels'>, shoe: SizedShoe) {
  const others: number[] = [];
  let women: number | undefined;
  for (const system of LABEL_SYSTEMS) {
    if (system === 'mondopoint' || system === 'cm') continue;
    const foot = footOfLabel(system, box.labels[system]);
    if (foot === undefined) continue;
    if (system !== 'us-women') others.push(foot);
    else women = foot - (((shoe.usWomenOffset ?? US_WOMEN_DEFAULT) - US_WOMEN_DEFAULT) * 25.4) / 3;
  }
  const known = shoe.usWomenOffset !== undefined;
  const all = women !== undefined && (known || others.length === 0) ? [...others, women] : others;
  if (all.length === 0) return undefined;
  const low = Math.min(...all);
  const high = Math.max(...all);
  // Labels up to a formula's own doubt apart say nothing new; beyond it half their distance is doubt too.
  const apart = Math.max(0, (high - low) / 2 - BOX_DOUBT.formula);
  return {
    foot: (low + high) / 2,
    spread: high - low,
    doubt: apart + (others.length === 0 && !known ? WOMEN_DOUBT : 0),
  };
}

/** Few distinct labels stand on very many boxes, so each is read once. Bounded, as stock comes from outside. */
const read = new Map<string, number | undefined>();
const MOST_READ = 4096;

/** The foot a label stands for, millimetres, at the default offset for US women's. */
export function footOfLabel(system: LabelSystem, label: string | undefined): number | undefined {
  if (label === undefined) return undefined;
  const key = `${system} ${label}`;
  if (read.has(key)) return read.get(key);
  const size = SYSTEMS[system].parse(label);
  const foot = size === undefined ? undefined : SYSTEMS[system].foot(size);
  if (read.size >= MOST_READ) read.clear();
  read.set(key, foot);
  return foot;
}
