import type { AttributeKey } from '../attributes/attributes.ts';
import type { Facts } from '../profile/profile.ts';
import type { Shoe } from '../stock/shoe.ts';
import { minimalistRise } from './minimalist-index.ts';
import type { EaseIn, EaseInTrigger } from './shortlist.ts';

/** A drop this much lower than today's asks for easing in, mm. Our choice: stated drops err by 1 to 3 mm. */
const LOWER_DROP = 4;

/** So many points up on the Minimalist Index is a much thinner and bendier shoe. Our choice; no paper gives a figure. */
const MUCH_MORE_MINIMAL = 20;

/** The index was made for running and walking shoes, so only these uses, and kinds worn today, are looked at. */
const INDEX_USES = ['road', 'trail', 'walking'];
const INDEX_KINDS = ['road-cushioned', 'road-tall-soft', 'road-light', 'road-flat', 'road-support', 'trail', 'walking'];

/** `tall` on the rocker scale, `plate` on the forefoot's. */
const TALL_ROCKER = 2;
const PLATE = 5;

/**
 * Share of the usual load in the new pair, week by week. In the studies reviewed by Warne & Gruber 2017 (Sports Med
 * Open 3:33) every change to a low or minimal shoe was phased in, over 2 weeks to half a year, to 60 % on average;
 * none shows that it prevents injury. The steps are ours: a tenth at first, longer when both triggers hold.
 */
const SLOW = [0.1, 0.1, 0.2, 0.2, 0.3, 0.4, 0.5, 0.6];
const SLOWEST = [0.1, 0.1, 0.1, 0.2, 0.2, 0.2, 0.3, 0.3, 0.4, 0.4, 0.5, 0.6];
/** For a tall rocker or a plate: common practice. */
const SHORT = [0.25, 0.5, 0.75, 1];

/**
 * How to change over from today's shoe to this one, in the customer's own unit. Nothing when the change is small, or
 * not known to be large.
 */
export function easeInFor(shoe: Shoe, facts: Facts, unit: string): EaseIn | null {
  const today = (key: AttributeKey) => {
    const value = facts[`today-${key}`];
    return typeof value === 'number' ? value : undefined;
  };
  const { numbers } = shoe;
  const triggers: EaseInTrigger[] = [];

  const dropToday = today('drop');
  if (dropToday !== undefined && numbers.drop !== undefined && dropToday - numbers.drop > LOWER_DROP)
    triggers.push('lower-drop');

  const kind = facts['now-kind'];
  const indexed =
    typeof kind === 'string' && INDEX_KINDS.includes(kind) && shoe.use.some((u) => INDEX_USES.includes(u));
  const rise = indexed
    ? minimalistRise(
        figures(today),
        figures((key) => numbers[key]),
      )
    : undefined;
  if (rise !== undefined && rise > MUCH_MORE_MINIMAL) triggers.push('thinner-bendier');

  if ((numbers.rocker ?? 0) >= TALL_ROCKER && (today('rocker') ?? 0) < TALL_ROCKER) triggers.push('tall-rocker');
  if ((numbers['forefoot-stiffness'] ?? 0) >= PLATE && (today('forefoot-stiffness') ?? 0) < PLATE)
    triggers.push('plate');
  if (triggers.length === 0) return null;

  const down = triggers.filter((trigger) => trigger === 'lower-drop' || trigger === 'thinner-bendier').length;
  const shares = down === 2 ? SLOWEST : down === 1 ? SLOW : SHORT;
  return {
    triggers,
    unit,
    weeks: shares.map((share, i) => ({ week: i + 1, share })),
    source: down > 0 ? 'warne-2017' : 'common-practice',
    ...(rise !== undefined && { minimalistRise: rise }),
  };
}

/**
 * What the index reads of a shoe. Five anchored words are spread evenly over each half scale of 0 to 2.5 points, an
 * approximation; how many stability devices a shoe has is not recorded, so that part counts as no change.
 */
function figures(of: (key: AttributeKey) => number | undefined): Parameters<typeof minimalistRise>[0] {
  const half = (step: number | undefined) => (step === undefined ? undefined : (step - 1) * 0.625);
  const known = {
    mass: of('mass'),
    heelStack: of('heel-stack'),
    drop: of('drop'),
    bend: half(of('bend')),
    twist: half(of('twist')),
  };
  return Object.fromEntries(Object.entries(known).filter(([, value]) => value !== undefined));
}
