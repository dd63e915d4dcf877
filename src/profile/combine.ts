import type { NumberRow } from '../attributes/row.ts';
import type { Contribution } from './contributions.ts';
import { WEAK_VOICE } from './grade-caps.ts';
import { byText } from './told.ts';

export type Range = readonly [number, number];

/** Where the asks on one property come out, before rounding. */
export interface Combined {
  readonly ideal: Range;
  readonly limits: Range;
  /** 0 to 1: grows with every weight, whatever the others are. */
  readonly strength: number;
  readonly parts: readonly Part[];
}

/** One contribution with its final weight and the range that would meet it. */
export interface Part {
  readonly contribution: Contribution;
  readonly weight: number;
  readonly range: Range;
}

/**
 * Combines what is asked of one property. `today` is its figure on the shoe worn today, where known.
 *
 * Ranges are averaged by weight, so that raising a weight moves the result towards what it asks. Wishes (`shift`) then
 * move that range as a whole. A wish to have more is met by anything at or above its target, so it can only raise the
 * range, never lower it, and the other way round; on each side the furthest-moving wish speaks for all, so that wishing
 * twice does not move twice. A wish of weight w against others of weight W goes w / (w + W) of the way.
 *
 * Nothing where there is nothing to go by: "same as today" with today's shoe unknown.
 */
export function combine(contributions: readonly Contribution[], row: NumberRow, today?: number): Combined | undefined {
  const usable = contributions.filter(({ ask }) => ask.ideal !== undefined || ask.shift !== 0 || today !== undefined);
  if (usable.length === 0) return undefined;
  const weakOnes = usable.filter((each) => each.weak).length;
  const voiced = usable
    .map((each) => ({
      contribution: each,
      weight: each.weak ? Math.min(each.weight, WEAK_VOICE) / weakOnes : each.weight,
    }))
    .sort((a, b) => byText(a.contribution.reason.rule, b.contribution.reason.rule));
  const asked = voiced.flatMap(({ contribution, weight }) => {
    const { ideal, limits } = contribution.ask;
    return ideal ? [{ contribution, weight, range: ideal, limits: limits ?? widened(ideal, row.step) }] : [];
  });
  const rest = restOf(asked, row, today);
  const from = middle(rest.ideal);
  const wishes = voiced.flatMap(({ contribution, weight }) =>
    contribution.ask.ideal ? [] : [wishOf(contribution, weight, from, today)],
  );
  const moved = travel(wishes, rest.weight, 1) - travel(wishes, rest.weight, -1);
  const ideal = [clip(rest.ideal[0] + moved, row), clip(rest.ideal[1] + moved, row)] as const;
  return {
    ideal,
    limits: [Math.min(rest.limits[0] + moved, ideal[0]), Math.max(rest.limits[1] + moved, ideal[1])],
    strength: 1 - voiced.reduce((left, { weight }) => left * (1 - weight), 1),
    parts: [...asked, ...wishes.map((wish) => ({ ...wish, range: satisfying(wish, row) }))],
  };
}

interface Asked extends Part {
  readonly limits: Range;
}

/** What is asked apart from wishes; around today's figure, or the middle of the scale, where nothing is. */
function restOf(asked: readonly Asked[], row: NumberRow, today: number | undefined) {
  const weight = asked.reduce((sum, each) => sum + each.weight, 0);
  if (weight === 0) {
    const ideal = around(today ?? middle(row.range), row.step);
    return { ideal, limits: widened(ideal, row.step), weight };
  }
  const mean = (of: (each: Asked) => number): number =>
    asked.reduce((sum, each) => sum + of(each) * each.weight, 0) / weight;
  return {
    ideal: [mean((each) => each.range[0]), mean((each) => each.range[1])] as const,
    limits: [mean((each) => each.limits[0]), mean((each) => each.limits[1])] as const,
    weight,
  };
}

interface Wish {
  readonly contribution: Contribution;
  readonly weight: number;
  readonly target: number;
  readonly side: 1 | -1;
  /** How far away the target still lies on its side; negative where the rest goes beyond it already. */
  readonly distance: number;
}

function wishOf(contribution: Contribution, weight: number, from: number, today: number | undefined): Wish {
  const shift = contribution.ask.shift ?? 0;
  const target = (today ?? from) + shift;
  const side = (shift === 0 ? target - from : shift) < 0 ? -1 : 1;
  return { contribution, weight, target, side, distance: side * (target - from) };
}

/** How far the wishes on one side move the range, against the rest and the wishes on the other side; never backwards. */
function travel(wishes: readonly Wish[], rest: number, side: 1 | -1): number {
  const against = rest + wishes.filter((each) => each.side !== side).reduce((sum, each) => sum + each.weight, 0);
  return wishes
    .filter((each) => each.side === side)
    .reduce((most, { weight, distance }) => Math.max(most, (distance * weight) / (weight + against)), 0);
}

/** Everything that meets a wish: its target and beyond, or about its target where it is to stay as it is. */
function satisfying({ contribution, target, side }: Wish, row: NumberRow): Range {
  const [low, high] = around(target, row.step);
  if (contribution.ask.shift === 0) return [low, high];
  return side === 1 ? [low, Math.max(high, row.range[1])] : [Math.min(low, row.range[0]), high];
}

export const middle = ([low, high]: Range): number => (low + high) / 2;
const around = (value: number, width: number): Range => [value - width / 2, value + width / 2];
const widened = ([low, high]: Range, by: number): Range => [low - by, high + by];
const clip = (value: number, { range }: NumberRow): number => Math.min(range[1], Math.max(range[0], value));
