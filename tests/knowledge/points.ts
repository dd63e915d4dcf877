import { expect } from 'vitest';
import { attribute } from '../../src/attributes/table.ts';
import type { Ask, Grade, Knowledge } from '../../src/flow/knowledge.ts';

type Key = Ask['attribute'];
type Figures = Readonly<Partial<Record<Key, readonly number[]>>>;

/** Which way a rule on a source points: all it asks for, all it says, and how much it may weigh. */
interface Point {
  readonly grade: Grade;
  /** Asked into the upper, the lower half of the scale, or kept open to both ends alike. */
  readonly more?: readonly Key[];
  readonly less?: readonly Key[];
  readonly open?: readonly Key[];
  /** Figures that the wanted range holds, and that it leaves out. */
  readonly holds?: Figures;
  readonly leaves?: Figures;
  /** Cautions and advice. */
  readonly tells?: readonly string[];
  readonly musts?: readonly string[];
  readonly wishes?: readonly string[];
}

/** By rule, read off what its source found (`flows/sources.json`) and not off the rule. */
export const POINTS: Readonly<Record<string, Point>> = {
  'running-softer': { grade: 'moderate', more: ['cushion'] },
  'running-light': { grade: 'strong', less: ['mass'] },
  'running-drop-open': { grade: 'moderate', holds: { drop: [0, 6, 10] } },
  'running-drop-new': { grade: 'weak', less: ['drop'], leaves: { drop: [10] } },
  // 10 mm was the tallest drop tried, so the wish for it ends near it.
  'running-drop-regular': { grade: 'weak', holds: { drop: [10] }, leaves: { drop: [0, 6, 14] } },
  'running-little-control': { grade: 'common-practice', less: ['medial-support'] },
  'forefoot-bend': { grade: 'weak', more: ['bend'], less: ['forefoot-stiffness'] },
  'side-hold': { grade: 'weak', more: ['midfoot-hold'] },
  'squat-heel': { grade: 'weak', more: ['drop'] },
  'squat-heel-disputed': { grade: 'contested', more: ['drop'] },
  'standing-cushion': { grade: 'moderate', more: ['cushion'] },
  'standing-judge-later': { grade: 'weak', tells: ['judge-after-a-day'] },
  'long-hours-change': { grade: 'moderate', tells: ['sit-now-and-then'] },
  'rolling-comfort': { grade: 'moderate', more: ['rocker'] },
  'walking-little-impact': { grade: 'moderate', open: ['cushion'] },
  'many-hours': { grade: 'weak', tells: ['two-pairs-in-turn'] },
  'new-to-it': { grade: 'moderate', tells: ['grow-slowly'] },
  'floor-soft': { grade: 'weak', less: ['cushion'] },
  'hall-floor': { grade: 'common-practice', musts: ['non-marking=true'] },
  'rule-indoor-only': { grade: 'common-practice', tells: ['indoor-pair'] },
  'rule-stack-20': { grade: 'strong', musts: ['stack-cap=20'] },
  'rule-stack-40': { grade: 'strong', musts: ['stack-cap=40'] },
  'trouble-one-blister': {
    grade: 'moderate',
    tells: ['tape-the-spot', 'sock-against-rubbing', 'lace-for-hold', 'size-first'],
  },
  'trouble-heel-slips': { grade: 'weak', more: ['midfoot-hold'], tells: ['lace-for-hold', 'size-first'] },
  'trouble-numb-in-shoes': {
    grade: 'weak',
    more: ['instep-volume'],
    tells: ['numb-that-stays', 'loosen-over-the-top', 'size-first'],
  },
  'past-support-no-difference': { grade: 'strong', open: ['medial-support'] },
  'old-short': { grade: 'weak', tells: ['size-first'] },
  'foot-wide': {
    grade: 'common-practice',
    more: ['toe-box-shape', 'instep-volume'],
    tells: ['try-wider-box'],
    wishes: ['wide-fitting'],
  },
  'foot-narrow': { grade: 'common-practice', less: ['toe-box-shape'], more: ['midfoot-hold'] },
  'roll-alone': { grade: 'strong', tells: ['roll-is-normal'] },
  'roll-agreement': { grade: 'moderate', tells: ['roll-by-eye'] },
  'roll-with-history': { grade: 'contested', more: ['medial-support'], tells: ['compare-firmer-inner'] },
  'body-toes': { grade: 'moderate', more: ['toe-box-shape', 'toe-box-depth'], tells: ['size-first'] },
  'body-big-toe-bends': { grade: 'moderate', tells: ['toe-joint-bends'] },
  'body-arch': { grade: 'weak', tells: ['insole-by-comfort'] },
  // A soft sole and a low heel: some drop, neither flat nor tall.
  'body-heel': {
    grade: 'common-practice',
    more: ['cushion', 'heel-stack'],
    holds: { drop: [8] },
    leaves: { drop: [0, 15] },
  },
  'pain-unseen': { grade: 'strong', tells: ['pain-over-two-weeks'] },
  'ankle-history': { grade: 'moderate', tells: ['brace-and-balance'] },
  'ankle-brace-works': { grade: 'strong', tells: ['brace-and-balance'] },
  'ankle-collar': { grade: 'moderate', tells: ['collar-after-sprain'] },
  'ankle-collar-motion': { grade: 'moderate', tells: ['collar-after-sprain'] },
  older: {
    grade: 'moderate',
    less: ['heel-stack', 'cushion', 'drop'],
    tells: ['fasten-and-tread'],
    wishes: ['fastened'],
  },
  falls: {
    grade: 'moderate',
    less: ['heel-stack', 'cushion', 'drop'],
    more: ['midfoot-hold'],
    tells: ['steady-on-feet'],
    wishes: ['fastened'],
  },
  child: { grade: 'moderate', tells: ['child-feet-grow', 'room-to-grow'] },
  'child-space': { grade: 'weak', tells: ['room-to-grow'] },
  pregnancy: { grade: 'moderate', tells: ['measure-again-pregnancy'] },
  swelling: {
    grade: 'common-practice',
    more: ['instep-volume', 'toe-box-depth'],
    tells: ['measure-late'],
    wishes: ['wide-fitting'],
  },
  'diabetes-alone': { grade: 'strong', tells: ['diabetes-feet'] },
  'diabetes-room': { grade: 'moderate', more: ['toe-box-depth', 'toe-box-shape'] },
  'thick-sock': { grade: 'common-practice', more: ['instep-volume', 'toe-box-depth'], tells: ['bring-the-sock'] },
  'pull-on-unsteady': { grade: 'moderate', tells: ['fasten-and-tread'] },
  'sign-breathless': { grade: 'strong', tells: ['breathless-leg'] },
  'sign-hot-leg': { grade: 'strong', tells: ['hot-swollen-leg'] },
  'sign-four-steps': { grade: 'strong', tells: ['four-steps'] },
  'sign-sore-at-risk': { grade: 'strong', tells: ['open-skin-at-risk'] },
  'sign-snap': { grade: 'strong', tells: ['snap-at-heel'] },
  'sign-numb-diabetes': { grade: 'strong', tells: ['diabetes-foot-clinic'] },
  'sign-diabetes-foot-before': { grade: 'strong', tells: ['diabetes-foot-clinic'] },
  'sign-bone-spot': { grade: 'moderate', tells: ['bone-spot'] },
  'sign-ankle-still-giving': { grade: 'moderate', tells: ['ankle-still-giving-way'] },
};

/** Holds one rule to its point; throws where it is gone, silent, turned round, weighs more or does anything else. */
export function holdsToPoint(knowledge: Knowledge, id: string, point: Point): void {
  const rule = knowledge.rules.find((each) => each.id === id);
  if (!rule) throw new Error(`No rule ${id}`);
  const { more = [], less = [], open = [], holds = {}, leaves = {} } = point;
  const { asks = [], cautions = [], advice = [], musts = [], wishes = [], outcome } = rule;
  const ask = (key: Key): Ask => {
    const found = asks.find((each) => each.attribute === key);
    if (!found) throw new Error(`${id} asks nothing of ${key}`);
    return found;
  };
  for (const key of more) expect(lean(ask(key)), `${id} ${key}`).toBeGreaterThan(0);
  for (const key of less) expect(lean(ask(key)), `${id} ${key}`).toBeLessThan(0);
  for (const key of open) expect(lean(ask(key)), `${id} ${key}`).toBe(0);
  const inside = (key: string, figure: number): boolean => {
    const [from, to] = ask(key as Key).ideal ?? [0, 0];
    return figure >= from && figure <= to;
  };
  for (const [key, figures] of Object.entries(holds)) for (const at of figures) expect(inside(key, at), id).toBe(true);
  for (const [key, figures] of Object.entries(leaves))
    for (const at of figures) expect(inside(key, at), id).toBe(false);
  const named = [...more, ...less, ...open, ...Object.keys(holds), ...Object.keys(leaves)];
  expect([...new Set(named)].sort(), id).toEqual(asks.map((each) => each.attribute).sort());
  expect([...cautions, ...advice], id).toEqual(point.tells ?? []);
  expect(
    musts.map(({ attribute: key, value }) => `${key}=${value}`),
    id,
  ).toEqual(point.musts ?? []);
  expect(
    wishes.map((wish) => wish.id),
    id,
  ).toEqual(point.wishes ?? []);
  expect(outcome, id).toBeUndefined();
  expect(rule.grade, id).toBe(point.grade);
}

/** How far the middle of what is asked lies above the middle of the scale; a shift leans by itself. */
function lean({ attribute: key, ideal, shift = 0 }: Ask): number {
  if (!ideal) return shift;
  const [low, high] = attribute(key).range;
  return (ideal[0] + ideal[1] - low - high) / 2;
}
