import { uniformInt } from 'pure-rand/distribution/uniformInt';
import type { RandomGenerator } from 'pure-rand/types/RandomGenerator';
import type { Box, BoxWidth, LabelSystem, Shelf } from '../src/stock/shoe.ts';

/**
 * How an invented maker labels its boxes. The shifts make labels that do not convert into each other, as on real
 * boxes: formulas from the foot (`EU = 0.15 L + 2`, `UK = 3 L / 25.4 - 23`) move by what the maker likes.
 */
export interface LabelHabit {
  readonly euShift: number;
  readonly euSteps: 'halves' | 'thirds';
  readonly ukShift: number;
  readonly usMenOverUk: number;
  readonly usWomenOverUk: number;
  readonly centimetres: boolean;
  readonly mondopoint: boolean;
  /** Inner length beyond the foot it is marked for, millimetres. */
  readonly room: number;
}

const habit = (
  euShift: number,
  euSteps: LabelHabit['euSteps'],
  ukShift: number,
  usMenOverUk: number,
  usWomenOverUk: number,
  more: '' | 'cm' | 'mondopoint',
  room: number,
): LabelHabit => ({
  euShift,
  euSteps,
  ukShift,
  usMenOverUk,
  usWomenOverUk,
  centimetres: more === 'cm',
  mondopoint: more === 'mondopoint',
  room,
});

/** Invented; the shifts stay within the published disagreements of half an EU size and half a US size. */
export const LABEL_HABITS: readonly LabelHabit[] = [
  habit(0, 'halves', 0, 1, 2, 'cm', 12),
  habit(0.5, 'halves', 0, 1, 2.5, 'cm', 13),
  habit(0.5, 'thirds', 0, 0.5, 1.5, '', 12),
  habit(0.54, 'halves', -0.5, 1, 2.5, 'cm', 10),
  habit(0, 'thirds', 0.5, 0.5, 2, '', 15),
  habit(-0.25, 'halves', 0, 1, 2, 'mondopoint', 14),
];

/** Foot lengths stocked, millimetres, first and last. */
const RUNS: Readonly<Record<Shelf, readonly [number, number]>> = {
  women: [225, 275],
  men: [245, 310],
  any: [230, 305],
  junior: [180, 240],
};

export function boxesFor(
  model: { readonly id: string; readonly shelf: Shelf; readonly rack: string; readonly widths: readonly string[] },
  maker: LabelHabit,
  offset: number,
  statesInnerLength: boolean,
  random: RandomGenerator,
): readonly Box[] {
  const [first, last] = RUNS[model.shelf];
  const place = `${model.rack}${uniformInt(random, 1, 9)}`;
  const boxes: Box[] = [];
  for (let foot = first; foot <= last; foot += 5) {
    for (const width of model.widths.length > 0 ? model.widths : [undefined]) {
      const inTheMiddle = foot > first + 10 && foot < last - 15;
      // A third of the rarer sizes sold out, a sixth of the others; last pairs are common. Invented.
      const rare = !inTheMiddle || (width !== undefined && width !== 'standard');
      const onHand = uniformInt(random, 1, 6) <= (rare ? 2 : 1) ? 0 : Math.ceil(uniformInt(random, 1, 6) / 2);
      const reserved = onHand > 0 && uniformInt(random, 1, 16) === 1 ? 1 : 0;
      const labels = labelsFor(foot, model.shelf, maker);
      boxes.push({
        id: [model.id, foot, width === 'standard' ? undefined : width].filter(Boolean).join('-'),
        shoe: model.id,
        labels,
        ...(statesInnerLength ? { innerLength: foot + maker.room + offset } : {}),
        ...(width ? { width: width as BoxWidth } : {}),
        place,
        onHand,
        reserved,
      });
    }
  }
  return boxes;
}

function labelsFor(foot: number, shelf: Shelf, maker: LabelHabit): Box['labels'] {
  const labels: Partial<Record<LabelSystem, string>> = {};
  const eu = 0.15 * foot + 2 + maker.euShift;
  labels.eu = maker.euSteps === 'halves' ? String(half(eu)) : thirds(eu);
  const uk = half((3 * foot) / 25.4 - 23 + maker.ukShift);
  if (uk >= 1) {
    labels.uk = String(uk);
    if (shelf !== 'women') labels['us-men'] = String(uk + maker.usMenOverUk);
    if (shelf === 'women' || shelf === 'any') labels['us-women'] = String(uk + maker.usWomenOverUk);
  } else {
    labels['uk-child'] = String(half((3 * foot) / 25.4 - 10 + maker.ukShift));
  }
  if (maker.centimetres) labels.cm = String(foot / 10);
  if (maker.mondopoint) labels.mondopoint = String(foot);
  return labels;
}

const half = (size: number): number => Math.round(size * 2) / 2;

function thirds(size: number): string {
  const whole = Math.floor(size + 1 / 6);
  const part = Math.round((size - whole) * 3);
  return part <= 0 ? String(whole) : `${whole} ${part}/3`;
}
