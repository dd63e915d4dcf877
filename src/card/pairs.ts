import { MOST_SAID, tellable } from '../shortlist/meets.ts';
import type { Entry, LineUp } from '../shortlist/shortlist.ts';
import { type Box, LABEL_SYSTEMS, type LabelSystem, type Shoe } from '../stock/shoe.ts';
import { type Calculated, labelBeside } from './calculated-size.ts';
import type { CardBox, CardLineUp, CardMeets, CardPair } from './card.ts';
import { isHealth } from './private.ts';
import { ownOf, sharedBy } from './shared-by.ts';

export interface PairPrivacy {
  readonly health: ReadonlySet<string>;
  readonly tellsHealth: boolean;
  /** Musts that follow from health answers alone and may not be named. */
  readonly hiddenMusts: ReadonlySet<string>;
  /** Whether to keep the answers that reasons are traced to. */
  readonly withFrom: boolean;
}

/** Reasons and misgivings in the order of their weight, as far as this card may tell them. */
type Tell = (meets: Entry['reasons']) => readonly CardMeets[];

/** Where reasons are shared, so many of them are said, and so many of each pair's own: together a line more than one pair had. Our choice. */
const SHARED = 2;

/**
 * Line-ups with letters running on over all of them, and the shoe behind each letter. `given` are shoe ids in the order
 * of the letters they already have; `calculated` is the size that labels are held against. Once a pair is `decided` on,
 * its reasons are its own and none is told of several at once.
 */
export function pairsOf(
  lineUps: readonly LineUp[],
  first: LabelSystem,
  privacy: PairPrivacy,
  given: readonly string[] = [],
  calculated?: Calculated,
  decided = false,
): { readonly lineUps: readonly CardLineUp[]; readonly shoes: readonly { letter: string; shoe: Shoe }[] } {
  const order = new Set(given);
  const shoes: { letter: string; shoe: Shoe }[] = [];
  const tells = (from: string) => privacy.tellsHealth || !isHealth(from, privacy.health);
  const tell: Tell = (meets) =>
    // The last pair is said once, beside the pair: see `lastPair`.
    tellable(
      meets.filter((item) => tells(item.from) && item.code !== 'last-pair'),
      privacy.tellsHealth,
    ).map((item) => ({
      code: item.code,
      ...(item.attribute ? { attribute: item.attribute } : {}),
      ...(privacy.withFrom ? { from: item.from } : {}),
    }));
  const out = lineUps.map((lineUp) => {
    const all = (of: 'misgivings' | 'reasons') =>
      decided ? [] : sharedBy(lineUp.entries.map((entry) => tell(entry[of])));
    const shared = { reasons: all('reasons'), misgivings: all('misgivings') };
    return {
      for: lineUp.for,
      sureness: lineUp.sureness,
      ...(shared.reasons.length > 0 ? { sharedReasons: shared.reasons.slice(0, SHARED) } : {}),
      ...(shared.misgivings.length > 0 ? { sharedMisgivings: shared.misgivings.slice(0, SHARED) } : {}),
      pairs: lineUp.entries.map((entry) => {
        order.add(entry.shoe.id);
        const letter = letterOf([...order].indexOf(entry.shoe.id));
        if (!shoes.some(({ shoe }) => shoe.id === entry.shoe.id)) shoes.push({ letter, shoe: entry.shoe });
        return pairOf(entry, letter, { first, calculated }, tell, shared);
      }),
      ifDropped:
        lineUp.entries.length === 0 ? lineUp.ifDropped.filter((each) => !privacy.hiddenMusts.has(each.must)) : [],
      ...(lineUp.moreWithout && !privacy.hiddenMusts.has(lineUp.moreWithout.must)
        ? { moreWithout: lineUp.moreWithout }
        : {}),
      ...(lineUp.whatIf && tells(lineUp.whatIf.question) ? { whatIf: lineUp.whatIf } : {}),
    };
  });
  return { lineUps: out, shoes };
}

function pairOf(
  entry: Entry,
  letter: string,
  { first, calculated }: { readonly first: LabelSystem; readonly calculated: Calculated | undefined },
  tell: Tell,
  shared: Readonly<Record<'misgivings' | 'reasons', readonly CardMeets[]>>,
): CardPair {
  const own = (of: 'misgivings' | 'reasons') => ownOf(tell(entry[of]), shared[of]);
  const reasons = shared.reasons.length > 0 ? SHARED : MOST_SAID;
  return {
    letter,
    shoe: entry.shoe.id,
    name: entry.shoe.name,
    part: entry.part,
    ...(entry.shoe.numbers.price === undefined ? {} : { price: entry.shoe.numbers.price }),
    lastPair: entry.lastPair,
    boxes: entry.boxes.map((fit) => boxOf(fit.box, first)),
    ...besideCalculated(entry, first, calculated),
    reasons: own('reasons').slice(0, reasons),
    misgivings: own('misgivings').slice(0, MOST_SAID),
    unknown: entry.unknown,
    easeIn: entry.easeIn && { triggers: entry.easeIn.triggers, unit: entry.easeIn.unit, weeks: entry.easeIn.weeks },
  };
}

/** Of a box that fits, only where something better than the labels themselves judged the length. */
function besideCalculated(
  { boxes: [fit] }: Entry,
  first: LabelSystem,
  calculated: Calculated | undefined,
): Pick<CardPair, 'labelBeside'> {
  const beside = fit && calculated && labelBeside(boxOf(fit.box, first), calculated);
  if (!beside) return {};
  if (fit.fits === 'maybe') return { labelBeside: `${beside}-unsure` };
  return fit.by === 'formula' ? {} : { labelBeside: beside };
}

/** A box by what is printed on it. The usual width goes without saying. */
export function boxOf(box: Box, first: LabelSystem): CardBox {
  const order = [first, ...LABEL_SYSTEMS.filter((system) => system !== first)];
  return {
    labels: order.flatMap((system) => {
      const label = box.labels[system];
      return label === undefined ? [] : [{ system, label }];
    }),
    ...(box.width && box.width !== 'standard' ? { width: box.width } : {}),
    place: box.place,
  };
}

/** A to Z, then AA, AB… A card has a handful; a test asks for more. */
export function letterOf(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : letterOf(Math.floor(index / 26) - 1) + last;
}
