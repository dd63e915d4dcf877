import { type Box, LABEL_SYSTEMS, type LabelSystem, type Shelf } from '../stock/shoe.ts';
import { BARLEYCORN } from '../units/length.ts';
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

/** The systems whose labels are converted by formula; US women's apart, for its two offsets. */
const BY_FORMULA = LABEL_SYSTEMS.filter((system) => !['mondopoint', 'cm', 'us-women'].includes(system));

/** The foot that a box's converted labels stand for, and how far apart they are. A shop has tens of thousands of boxes. */
function byLabels({ labels }: Pick<Box, 'labels'>, shoe: SizedShoe) {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const system of BY_FORMULA) {
    const foot = footOfLabel(system, labels[system]);
    if (foot === undefined) continue;
    low = Math.min(low, foot);
    high = Math.max(high, foot);
  }
  const known = shoe.usWomenOffset !== undefined;
  const others = low <= high;
  const women = known || !others ? footOfLabel('us-women', labels['us-women']) : undefined;
  if (women !== undefined) {
    const foot = women - ((shoe.usWomenOffset ?? US_WOMEN_DEFAULT) - US_WOMEN_DEFAULT) * BARLEYCORN;
    low = Math.min(low, foot);
    high = Math.max(high, foot);
  }
  if (low > high) return undefined;
  // Labels up to a formula's own doubt apart say nothing new; beyond it half their distance is doubt too.
  const apart = Math.max(0, (high - low) / 2 - BOX_DOUBT.formula);
  return { foot: (low + high) / 2, spread: high - low, doubt: apart + (others || known ? 0 : WOMEN_DOUBT) };
}

/** Few distinct labels stand on very many boxes, so each is read once. Bounded, as stock comes from outside. */
const read = new Map<LabelSystem, Map<string, number | undefined>>(LABEL_SYSTEMS.map((system) => [system, new Map()]));
const MOST_READ = 1024;

/** The foot a label stands for, millimetres, at the default offset for US women's. */
export function footOfLabel(system: LabelSystem, label: string | undefined): number | undefined {
  const known = read.get(system);
  if (label === undefined || known === undefined) return undefined;
  const before = known.get(label);
  if (before !== undefined || known.has(label)) return before;
  const size = SYSTEMS[system].parse(label);
  const foot = size === undefined ? undefined : SYSTEMS[system].foot(size);
  if (known.size >= MOST_READ) known.clear();
  known.set(label, foot);
  return foot;
}
