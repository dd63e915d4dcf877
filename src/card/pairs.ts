import { said } from '../shortlist/meets.ts';
import type { Entry, LineUp } from '../shortlist/shortlist.ts';
import { type Box, LABEL_SYSTEMS, type LabelSystem, type Shoe } from '../stock/shoe.ts';
import { type Calculated, labelBeside } from './calculated-size.ts';
import type { CardBox, CardLineUp, CardPair } from './card.ts';
import { isHealth } from './private.ts';

export interface PairPrivacy {
  readonly health: ReadonlySet<string>;
  readonly tellsHealth: boolean;
  /** Musts that follow from health answers alone and may not be named. */
  readonly hiddenMusts: ReadonlySet<string>;
  /** Whether to keep the answers that reasons are traced to. */
  readonly withFrom: boolean;
}

/**
 * Line-ups with letters running on over all of them, and the shoe behind each letter. `given` are shoe ids in the order
 * of the letters they already have; `calculated` is the size that labels are held against.
 */
export function pairsOf(
  lineUps: readonly LineUp[],
  first: LabelSystem,
  privacy: PairPrivacy,
  given: readonly string[] = [],
  calculated?: Calculated,
): { readonly lineUps: readonly CardLineUp[]; readonly shoes: readonly { letter: string; shoe: Shoe }[] } {
  const order = new Set(given);
  const shoes: { letter: string; shoe: Shoe }[] = [];
  const tells = (from: string) => privacy.tellsHealth || !isHealth(from, privacy.health);
  const out = lineUps.map((lineUp) => ({
    for: lineUp.for,
    sureness: lineUp.sureness,
    pairs: lineUp.entries.map((entry) => {
      order.add(entry.shoe.id);
      const letter = letterOf([...order].indexOf(entry.shoe.id));
      if (!shoes.some(({ shoe }) => shoe.id === entry.shoe.id)) shoes.push({ letter, shoe: entry.shoe });
      return pairOf(entry, letter, { first, calculated }, tells, privacy);
    }),
    ifDropped:
      lineUp.entries.length === 0 ? lineUp.ifDropped.filter((each) => !privacy.hiddenMusts.has(each.must)) : [],
    ...(lineUp.moreWithout && !privacy.hiddenMusts.has(lineUp.moreWithout.must)
      ? { moreWithout: lineUp.moreWithout }
      : {}),
    ...(lineUp.whatIf && tells(lineUp.whatIf.question) ? { whatIf: lineUp.whatIf } : {}),
  }));
  return { lineUps: out, shoes };
}

function pairOf(
  entry: Entry,
  letter: string,
  { first, calculated }: { readonly first: LabelSystem; readonly calculated: Calculated | undefined },
  tells: (from: string) => boolean,
  { tellsHealth, withFrom }: PairPrivacy,
): CardPair {
  const meets = (list: Entry['reasons']) =>
    said(
      // Said once, beside the pair: see `lastPair`.
      list.filter((item) => tells(item.from) && item.code !== 'last-pair'),
      tellsHealth,
    ).map((item) => ({
      code: item.code,
      ...(item.attribute ? { attribute: item.attribute } : {}),
      ...(withFrom ? { from: item.from } : {}),
    }));
  return {
    letter,
    shoe: entry.shoe.id,
    name: entry.shoe.name,
    part: entry.part,
    ...(entry.shoe.numbers.price === undefined ? {} : { price: entry.shoe.numbers.price }),
    lastPair: entry.lastPair,
    boxes: entry.boxes.map((fit) => boxOf(fit.box, first)),
    ...besideCalculated(entry, first, calculated),
    reasons: meets(entry.reasons),
    misgivings: meets(entry.misgivings),
    unknown: entry.unknown,
    easeIn: entry.easeIn && { triggers: entry.easeIn.triggers, unit: entry.easeIn.unit, weeks: entry.easeIn.weeks },
  };
}

/** Said only where something better than the labels themselves judged the length. */
function besideCalculated(
  { boxes: [fit] }: Entry,
  first: LabelSystem,
  calculated: Calculated | undefined,
): Pick<CardPair, 'labelBeside'> {
  if (!fit || !calculated || fit.fits !== 'yes' || fit.by === 'formula') return {};
  const beside = labelBeside(boxOf(fit.box, first), calculated);
  return beside ? { labelBeside: beside } : {};
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
