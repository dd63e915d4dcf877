import type { FormulaLabels } from '../sizing/advice.ts';
import { footOfLabel } from '../sizing/judge-box.ts';
import type { Box, LabelSystem } from '../stock/shoe.ts';
import { PARIS_POINT } from '../units/length.ts';
import type { CardBox, CardLineUp } from './card.ts';

/** A size worked out from a foot, in one system: no box need bear it. */
export interface Calculated {
  readonly system: LabelSystem;
  readonly label: string;
}

const KEYS: Readonly<Partial<Record<LabelSystem, keyof FormulaLabels>>> = {
  eu: 'eu',
  uk: 'uk',
  'us-men': 'usMen',
  'us-women': 'usWomen',
  'uk-child': 'ukChild',
  'us-child': 'usChild',
  mondopoint: 'mondopoint',
};

/** Whom a system is for; the others serve everybody. */
const SHELF_OF: Readonly<Partial<Record<LabelSystem, string>>> = { 'us-men': 'men', 'us-women': 'women' };

/**
 * The calculated size in the systems that a customer of this shelf meets, their own first. Children's scales stand in
 * for the adults' where the foot is on them. Systems that make none so short or so long are left out.
 */
export function calculatedSizes(first: LabelSystem, labels: FormulaLabels, shelf: unknown): readonly Calculated[] {
  const child = labels.ukChild !== undefined || labels.usChild !== undefined;
  const usual: readonly LabelSystem[] = child
    ? ['eu', 'uk-child', 'uk', 'us-child']
    : [
        'eu',
        'uk',
        ...US.filter((system) => ![...Object.values(SHELF_OF)].includes(String(shelf)) || SHELF_OF[system] === shelf),
      ];
  return [...new Set([first, ...usual])].flatMap((system) => {
    const label = labels[KEYS[system] ?? 'eu'];
    const made = KEYS[system] !== undefined && label !== undefined && footOfLabel(system, label) !== undefined;
    return made ? [{ system, label }] : [];
  });
}
const US = ['us-men', 'us-women'] as const;

/** Millimetres of foot: less than half a size of any system. The closest are EU halves, 3.3 apart (half a Paris point). */
const HALF_A_SIZE = 3;

/**
 * Whether a box to fetch first bears another size than the calculated one, so that whoever reads both would take one of
 * them for a mistake.
 */
export function labelsDiffer(lineUps: readonly CardLineUp[], { system, label }: Calculated): boolean {
  const foot = footOfLabel(system, label) ?? 0;
  const firsts = lineUps.flatMap(({ pairs }) => pairs).flatMap(({ boxes }) => boxes.slice(0, 1));
  const printed = firsts.flatMap(({ labels }) => labels.filter((each) => each.system === system));
  return printed.some((each) => Math.abs((footOfLabel(system, each.label) ?? foot) - foot) >= HALF_A_SIZE);
}

/**
 * How a box's label stands beside the calculated size, where it is a whole size off or more: whoever reads both would
 * take the box for a mistake. Nothing where the box bears no label of that system.
 *
 * @example labelBeside({ labels: [{ system: 'eu', label: '42.5' }], place: 'C4' }, { system: 'eu', label: '44' }) // 'smaller'
 */
export function labelBeside({ labels }: CardBox, { system, label }: Calculated): 'smaller' | 'larger' | undefined {
  const printed = labels.find((each) => each.system === system);
  const foot = footOfLabel(system, label);
  const made = printed && footOfLabel(system, printed.label);
  if (foot === undefined || made === undefined || Math.abs(made - foot) < WHOLE_SIZE) return undefined;
  return made < foot ? 'smaller' : 'larger';
}
/** A whole size of the closest scale, EU's, less what rounding takes, millimetres of foot. */
const WHOLE_SIZE = PARIS_POINT - 0.5;

/**
 * Whether none of a model's boxes bears the calculated size, though some bear labels of its system: whoever looks for
 * it on the shelf looks in vain.
 *
 * @example noneBears([{ labels: { eu: '41' } }, { labels: { eu: '43' } }], { system: 'eu', label: '42' }) // true
 */
export function noneBears(boxes: readonly Pick<Box, 'labels'>[], { system, label }: Calculated): boolean {
  const foot = footOfLabel(system, label);
  const printed = boxes.flatMap(({ labels }) => footOfLabel(system, labels[system]) ?? []);
  return foot !== undefined && printed.length > 0 && printed.every((each) => Math.abs(each - foot) >= HALF_A_SIZE);
}
