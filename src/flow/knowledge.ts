import type { AttributeKey } from '../attributes/attributes.ts';
import type { Condition } from './condition.ts';
import type { Flow } from './format.ts';

/**
 * Everything a flow folder knows: the questions, and the tables and rules that say what answers mean.
 * Read from `flows/<flow>/*.json` and `flows/sources.json`; checked by `fit check` before it is used.
 */
export interface Knowledge {
  readonly flow: Flow;
  readonly activities: readonly Activity[];
  readonly floors: readonly Floor[];
  readonly shoeKinds: readonly ShoeKind[];
  readonly rules: readonly Rule[];
  readonly cautions: readonly CautionRow[];
  readonly advice: readonly AdviceRow[];
  readonly sources: readonly Source[];
}

export const GRADES = ['strong', 'moderate', 'weak', 'contested', 'common-practice'] as const;
export type Grade = (typeof GRADES)[number];
/** How a fact came to us: read in its source, read in a secondary source, computed from those, or remembered. */
export const KNOWN = ['read', 'secondary', 'computed', 'memory'] as const;
export type Known = (typeof KNOWN)[number];

/** Who says so. `source` is an id in `flows/sources.json` or `common-practice`. */
export interface Backing {
  readonly source: string;
  readonly grade: Grade;
  readonly known: Known;
}

/** The loads an activity puts on shoe and foot, each 0 (none) to 1 (as much as any activity in the table). */
export const LOADS = [
  'impact',
  'forefoot-landing',
  'rearfoot-landing',
  'bounce',
  'side-to-side',
  'twisting',
  'forward-push',
  'squat',
  'time-on-feet',
  'pedals',
  'roughness',
  'toe-drag',
] as const;
export type Load = (typeof LOADS)[number];

export interface LoadValue extends Backing {
  /** 0 to 1. Ordinal unless `measured` gives a published figure behind it. */
  readonly value: number;
  readonly measured?: { readonly value: number; readonly unit: 'body-weights' };
}

/** One activity: a row of loads. Needs follow from the loads by rules, so a new activity is one row. */
export interface Activity {
  readonly id: string;
  /** First-tap group; one of eight on the screen. */
  readonly group: string;
  readonly loads: Readonly<Record<Load, LoadValue>>;
  /** Metabolic equivalent, with its Compendium code. `proxy` names the activity it was borrowed from. */
  readonly met?: Backing & { readonly value: number; readonly code: string; readonly proxy?: string };
  /** Space in front of the longest toe, millimetres, for adults. */
  readonly toeRoom: Backing & { readonly range: readonly [number, number] };
  /** The customer's own unit: what an ease-in plan counts in. */
  readonly unit: 'runs' | 'shifts' | 'sessions' | 'walks' | 'hours' | 'matches';
  /** Needs footwear of another kind, named here (`studs`, `cleats`, `pointe`…); the outcome is then `other-footwear`. */
  readonly otherFootwear?: string;
  /** Try-on tasks that rehearse it; gates and kit are in `src/card`. */
  readonly tasks: readonly string[];
  /** Floors it usually happens on, offered first. */
  readonly floors: readonly string[];
  /** What shops sell for it (`USES`), the best first. Absent or empty: no use goes with it, its loads alone decide. */
  readonly uses?: readonly string[];
}

export interface Floor {
  readonly id: string;
  readonly group: 'indoor' | 'outdoor';
  /** 0 gives like grass, 1 is concrete; a range because surfaces vary. */
  readonly hardness: Backing & { readonly range: readonly [number, number] };
  /** 0 slippery, 1 grips well, dry. */
  readonly grip: Backing & { readonly range: readonly [number, number] };
  /** Lug depth that suits it, millimetres. */
  readonly lugs: Backing & { readonly range: readonly [number, number] };
  /** 0 even, 1 rocky. */
  readonly roughness: Backing & { readonly value: number };
  /** Hall floors that are marked by dark rubber. */
  readonly marks?: true;
}

/** A kind of shoe worn today, with the figures usual for it, used where the shoe itself was not measured. */
export interface ShoeKind extends Backing {
  readonly id: string;
  readonly group: string;
  readonly usual: Readonly<Partial<Record<AttributeKey, readonly [number, number]>>>;
}

export const BASES = [
  'activity',
  'floor',
  'place',
  'liking',
  'body',
  'person',
  'today',
  'observation',
  'signs',
] as const;
export type Basis = (typeof BASES)[number];

/** One rule: when some facts hold, what follows. */
export interface Rule extends Backing {
  readonly id: string;
  readonly basis: Basis;
  /** Rules on one topic and attribute count once (the strongest), so that saying a thing twice does not double it. */
  readonly topic: string;
  readonly when?: Condition;
  readonly asks?: readonly Ask[];
  readonly musts?: readonly MustRow[];
  readonly wishes?: readonly WishRow[];
  /** Ids in cautions.json. */
  readonly cautions?: readonly string[];
  /** Ids in advice.json: sock, lacing, insole, size. */
  readonly advice?: readonly string[];
  readonly outcome?: Exclude<Outcome, 'shortlist'>;
}

/** What a rule asks of one property. Either an `ideal` range, or a `shift` away from today's shoe (or from what the rest asks). */
export interface Ask {
  readonly attribute: AttributeKey;
  /** Attribute's own unit. */
  readonly ideal?: readonly [number, number];
  /** Outside these nothing more is lost: desirability is at its floor. */
  readonly limits?: readonly [number, number];
  /** In the attribute's own unit, signed. */
  readonly shift?: number;
  /** 0 to 1 before grade caps. */
  readonly weight: number;
  /** A fact from 0 to 1 that scales the weight, so that effects grow with the load and do not jump. */
  readonly per?: string;
  /** No pair is there to compare that has less of it than is wanted: whoever tries it might not feel the harm. */
  readonly neverLess?: true;
}

/** What a must can demand beside a mark or an entry of a list: a cap, or that something is absent. */
export const MUST_LIMITS = ['stack-cap', 'price-max', 'closure-not', 'material-not', 'colour-not'] as const;

export interface MustRow {
  /** A mark, a list, or one of `MUST_LIMITS`. A property with a size is never a must: it is asked for. */
  readonly attribute: string;
  readonly value: string | number | boolean;
}

/** Something wished of a shoe that is not a size: any one of `anyOf` will do. It reorders, and shuts nothing out. */
export interface WishRow {
  /** Words: `reason.wish-<id>` and `misgiving.wish-<id>`. Said by several rules, it counts once. */
  readonly id: string;
  readonly anyOf: readonly MustRow[];
  /** 0 to 1 before grade caps. */
  readonly weight: number;
  /** A fact from 0 to 1 that scales the weight. */
  readonly per?: string;
  /** It bears on staying upright: a pair without it says so before all else. */
  readonly safety?: true;
}

export const OUTCOMES = ['refer', 'fitter-first', 'other-footwear', 'keep-yours', 'shortlist'] as const;
export type Outcome = (typeof OUTCOMES)[number];

export const CAUTION_LEVELS = ['now', 'today', 'before-choosing', 'mind', 'upkeep'] as const;
export type CautionLevel = (typeof CAUTION_LEVELS)[number];

/** One caution; its words are `caution.<id>` in the knowledge words. */
export interface CautionRow extends Backing {
  readonly id: string;
  readonly level: CautionLevel;
  /** Follows from a health answer: printed on the customer's card only with their consent. */
  readonly health?: true;
  /** On every customer card, whatever was answered. */
  readonly always?: true;
  /** On the fitter's copy only, never on the customer's card. Due to every row known from memory alone. */
  readonly fitterOnly?: true;
  /** `emergency`, `doctor`, `physiotherapist`, `podiatrist`, `midwife`, `pharmacist`, `prosthetist`… */
  readonly whom?: string;
}

/** Something to try before, or beside, another shoe. Its words are `advice.<id>`. */
export interface AdviceRow extends Backing {
  readonly id: string;
  readonly kind: 'sock' | 'lacing' | 'insole' | 'size' | 'habit';
  readonly health?: true;
  readonly fitterOnly?: true;
  /** About measuring, trying and choosing: of no use on the card of a pair that is chosen. */
  readonly untilChosen?: true;
}

/** One published source. */
export interface Source {
  readonly id: string;
  readonly authors: string;
  /** Absent where what was read shows none. */
  readonly year?: number;
  /** What it is about, in our words; not always the printed title. */
  readonly title: string;
  readonly where: string;
  readonly doi?: string;
  readonly kind:
    | 'trial'
    | 'cohort'
    | 'review'
    | 'guideline'
    | 'laboratory'
    | 'survey'
    | 'standard'
    | 'reference'
    | 'leaflet';
  /** What it found, in our words, with its figure. English; translated under `source.<id>.found`. */
  readonly found: string;
  readonly grade: Grade;
  readonly known: Known;
}
