import type { AttributeKey } from '../attributes/attributes.ts';
import type { Answer } from '../flow/answers.ts';
import type { Question } from '../flow/format.ts';
import type { CautionLevel, Grade, Known, Outcome } from '../flow/knowledge.ts';
import type { Feet, Foot } from '../observation/observation.ts';
import type { LineUp, MoreWithout, WhatIf } from '../shortlist/shortlist.ts';
import type { LabelSystem } from '../stock/shoe.ts';
import type { Finding } from '../units/result.ts';
import type { Choice, Clearance, Hold, Override, TryOn } from '../visit/visit.ts';
import type { Calculated } from './calculated-size.ts';
import type { Shop } from './shop.ts';

/**
 * Everything one fit card says, as codes and figures: no words, no places on paper. Layout and the reading copy both
 * start from it, so they cannot say different things.
 *
 * What is not in here is on no card. On a customer's copy nothing in here follows from a health answer unless
 * `healthNotes` is true; the pairs and their order are the one exception, since a shoe must still suit the foot.
 */
export interface CardFacts {
  readonly copy: Copy;
  readonly outcome: Outcome;
  /** For `other-footwear`: which kind (`studs`, `pedal-cleats`…). */
  readonly otherFootwear?: string;
  readonly shop: Shop;
  /** ISO date of the visit. */
  readonly date: string;
  /** The word and number that stand for the customer: `maple 14`. */
  readonly ticket: string;
  /** ISO date and time of the stock list. */
  readonly stockAsOf: string;
  /** What the square code holds: the card code, behind the kiosk's address where one is known. */
  readonly code: string;
  /** What the shoes are for. Absent where it was not asked. */
  readonly doing?: CardDoing;
  readonly lineUps: readonly CardLineUp[];
  /** What every pair has to be. On a customer's copy without those that follow from health alone. */
  readonly musts: readonly { readonly must: string; readonly value: string | number | boolean }[];
  readonly strips: readonly Strip[];
  /** Whether today's shoe on the strips was measured; else it stands where such shoes usually do. */
  readonly todayMeasured: boolean;
  readonly tasks: CardTasks;
  /** Absent on a `refer` card, which sells nothing. */
  readonly size?: CardSize;
  /** The customer came for their size alone: it heads the card, and the pairs are there to try it with. */
  readonly justSize: boolean;
  /** Most urgent first. */
  readonly cautions: readonly CardCaution[];
  readonly advice: readonly CardAdvice[];
  /** False: the card says that health was not asked about. */
  readonly healthAsked: boolean;
  /** True: the customer wants what followed from health answers on their card. Always true on a fitter's copy. */
  readonly healthNotes: boolean;
  /** What was decided at the bench: the shoe the customer takes, and the one that came second. Absent until then. */
  readonly chosen?: { readonly shoe: string; readonly second?: string };
  /** Weeks until the shop would like to see the chosen pair again. Absent until a pair is chosen. */
  readonly followUp?: number;
  /** Fitter's copy only. */
  readonly bench?: Bench;
}

export const COPIES = ['customer', 'fitter'] as const;
export type Copy = (typeof COPIES)[number];

export interface CardDoing {
  /** `netball`. */
  readonly activity: string;
  /** `court`. */
  readonly group: string;
  /** The first of the floors named as the main one. */
  readonly floor?: string;
}

export interface CardLineUp {
  /** `all`, or what this line-up is for: an activity, `indoor`, `outdoor`. */
  readonly for: string;
  readonly sureness: 'closest-on-paper' | 'feet-decide' | 'none';
  readonly pairs: readonly CardPair[];
  /** What all of the pairs meet, the most important first: said once, and of no pair by itself. Absent when nothing. */
  readonly sharedReasons?: readonly CardMeets[];
  /** What speaks against all of them alike. */
  readonly sharedMisgivings?: readonly CardMeets[];
  /** Only when there are no pairs: what would bring some back. */
  readonly ifDropped: LineUp['ifDropped'];
  /** Only where pairs are few, or not all made for what is done in them. */
  readonly moreWithout?: MoreWithout;
  readonly whatIf?: WhatIf;
}

export interface CardPair {
  /** A, B, C… running on over all line-ups of the card. */
  readonly letter: string;
  readonly shoe: string;
  readonly name: string;
  readonly part: string;
  /** In the shop's currency; absent where the list has none. */
  readonly price?: number;
  readonly lastPair: boolean;
  /** First to fetch, then the second where in doubt. */
  readonly boxes: readonly CardBox[];
  /**
   * The first box bears a label a whole size off the calculated one: it fits by its length all the same, or may fit if
   * the foot, which is not measured, is other than thought (`-unsure`).
   */
  readonly labelBeside?: 'smaller' | 'larger' | 'smaller-unsure' | 'larger-unsure';
  readonly reasons: readonly CardMeets[];
  readonly misgivings: readonly CardMeets[];
  readonly unknown: readonly AttributeKey[];
  readonly easeIn: CardEaseIn | null;
}

export interface CardBox {
  /** As printed on the box, the system the customer gave first. */
  readonly labels: readonly { readonly system: LabelSystem; readonly label: string }[];
  readonly width?: string;
  /** Shelf: `C4`. */
  readonly place: string;
}

export interface CardMeets {
  readonly code: string;
  readonly attribute?: AttributeKey;
  /** Fitter's copy only: the answer it is traced to. */
  readonly from?: string;
}

export interface CardEaseIn {
  readonly triggers: readonly string[];
  readonly unit: string;
  readonly weeks: readonly { readonly week: number; readonly share: number }[];
}

/** One property drawn as a tape measure. Places are shares of the tape, 0 to 1. */
export interface Strip {
  readonly attribute: AttributeKey;
  readonly band: readonly [number, number];
  readonly pairs: readonly { readonly letter: string; readonly at: number }[];
  /** Today's shoe. */
  readonly today?: number;
  /** Letters of pairs for which the figure is not recorded. */
  readonly missing: readonly string[];
  /** Fitter's copy only: wanted range in the attribute's own unit. */
  readonly wanted?: readonly [number, number];
}

/** Try-on tasks. `moving` ones wait for the fitter's tick; see `tasks.ts`. */
export interface CardTasks {
  readonly gentle: readonly string[];
  readonly moving: readonly string[];
  /** Whether the fitter has yet to say yes to the moving ones. */
  readonly needsFitter: boolean;
}

export interface CardSize {
  readonly from: 'measured' | 'insole' | 'box-label' | 'none';
  /** Longer foot, millimetres. */
  readonly footLength?: number;
  readonly doubt: number;
  readonly toeRoom: readonly [number, number];
  readonly innerLength?: readonly [number, number];
  /** The calculated size in each system the customer meets, their own first. Empty where nothing could be calculated. */
  readonly calculated: readonly Calculated[];
  /** A box to fetch bears another size than that. */
  readonly labelsDiffer: boolean;
  readonly findings: readonly Finding[];
  readonly left?: Foot;
  readonly right?: Foot;
}

export interface CardCaution {
  readonly code: string;
  readonly level: CautionLevel;
  readonly whom?: string;
  /** Fitter's copy only. */
  readonly backing?: { readonly source: string; readonly grade: Grade };
}

export interface CardAdvice {
  readonly code: string;
  readonly kind: string;
}

/** What a fitter's copy adds. */
export interface Bench extends BenchRecord {
  readonly hold: Hold;
  readonly needs: readonly BenchNeed[];
  readonly musts: readonly {
    readonly attribute: string;
    readonly value: string | number | boolean;
    readonly from: readonly string[];
  }[];
  /** Questions not answered that would sharpen it, best first. */
  readonly unknown: readonly string[];
  /** Every source named above, once. */
  readonly sources: readonly BenchSource[];
  readonly note?: string;
}

export interface BenchNeed {
  readonly attribute: AttributeKey;
  readonly ideal: readonly [number, number];
  readonly reasons: readonly BenchReason[];
}
export interface BenchReason {
  readonly from: string;
  readonly rule: string;
  readonly source: string;
  readonly grade: Grade;
}
export interface BenchSource {
  readonly id: string;
  readonly authors: string;
  readonly year?: number;
  readonly title: string;
  readonly where: string;
  readonly known: Known;
}

/** What was done at the bench. Whatever was not recorded is absent. */
export interface BenchRecord {
  readonly decision?: BenchDecision;
  /** A row for each box tried, the customer's favourite pair first. */
  readonly tried: readonly BenchTried[];
  readonly feet?: Feet;
  readonly changes: readonly BenchChange[];
  readonly clearance?: Clearance;
}

export type BenchDecision =
  | { readonly kind: 'pair'; readonly name: string; readonly box: CardBox | string; readonly second?: string }
  | Extract<Choice, { kind: 'none' }>;

/** The box as printed on it; its mark in the list where the list has lost it. */
export type BenchTried = Omit<TryOn, 'shoe' | 'box'> & { readonly name: string; readonly box: CardBox | string };

/** One answer that the fitter changed. */
export interface BenchChange {
  readonly question: Question;
  /** The customer's own answer. Absent where there is none. */
  readonly said?: Answer;
  /** There may be one, which stayed with the customer. */
  readonly keptPrivate: boolean;
  /** In their order; the last one counts. */
  readonly changes: readonly Override[];
}
