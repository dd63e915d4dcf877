import type { CautionLevel, Outcome } from '../../flow/knowledge.ts';
import type { Copy, Strip } from '../card.ts';

/**
 * A card in words of one language, not yet placed anywhere. The printed layout and the reading copy are both made
 * from it, so that they say the same.
 */
export interface CardText {
  readonly language: string;
  readonly direction: 'ltr' | 'rtl';
  readonly copy: Copy;
  readonly outcome: Outcome;
  readonly title: string;
  readonly lead: readonly string[];
  /** What every pair had to be, and is: no reason of one pair before another, but what the customer asked for. */
  readonly musts?: string;
  readonly head: HeadText;
  /** What the shoes are for: drawings with a word or two below each. */
  readonly pictures: readonly PictureText[];
  readonly fetch: FetchText;
  readonly lineUps: readonly LineUpText[];
  readonly strips: StripsText;
  readonly tasks: TasksText;
  readonly size?: SizeText;
  /** The customer came for their size alone. */
  readonly sizeFirst: boolean;
  readonly notes: NotesText;
  readonly cautions: readonly CautionsText[];
  readonly advice: ListText;
  readonly easeIn: EaseInText;
  readonly care: ListText;
  readonly bench?: BenchText;
  /** "Not asked about health", or that health notes are printed here because the customer asked. */
  readonly health: readonly string[];
  readonly disclaimer: string;
  /** For paper that fades. */
  readonly fades: string;
  readonly code: string;
  readonly codeSays: string;
  /** Page of pages, and where to cut. */
  readonly page: (page: number, pages: number) => string;
  readonly cut: string;
}

export interface HeadText {
  /** Who may read it; a fitter's copy says so first. */
  readonly copySays?: string;
  readonly shop: string;
  readonly address: readonly string[];
  readonly opening?: string;
  readonly logo?: string;
  readonly ticketSays: string;
  readonly ticket: string;
  readonly date: string;
  readonly stock: string;
}

export interface PictureText {
  /** A drawing of our own, 160 by 96, in lines 3 wide of the current colour. */
  readonly svg: string;
  readonly says: string;
}

export interface ListText {
  readonly heading: string;
  readonly items: readonly string[];
}

export interface FetchText {
  readonly heading: string;
  readonly boxes: readonly FetchBox[];
  /** Said when there is nothing to fetch. */
  readonly none: string;
}
export interface FetchBox {
  readonly letter: string;
  readonly name: string;
  /** The label to look for: `EU 42 2/3`. */
  readonly label: string;
  readonly shelf: string;
  /** Where the size is in doubt, the box to fetch after it: "then EU 43". */
  readonly next?: string;
  /** The first box's other labels and width. */
  readonly others: string;
}

export interface LineUpText {
  readonly heading?: string;
  /** What all of the pairs meet, and what speaks against all of them: a sentence each. */
  readonly sharedReasons?: string;
  readonly sharedMisgivings?: string;
  readonly pairs: readonly PairText[];
  readonly but: string;
  readonly notes: readonly string[];
}
export interface PairText {
  readonly letter: string;
  readonly name: string;
  readonly part: string;
  readonly where: string;
  /** For the screen: paper keeps no promise of a price. */
  readonly price?: string;
  readonly reasons: readonly string[];
  readonly misgivings: readonly string[];
  /** That it is the last pair. */
  readonly notes: readonly string[];
  /** What was needed and is not recorded. */
  readonly unknown?: string;
  /** "but", put before each misgiving. */
  readonly but: string;
}

export interface StripsText {
  readonly heading: string;
  readonly legend: { readonly band: string; readonly pair?: string; readonly today?: string };
  readonly rows: readonly StripText[];
}
export interface StripText {
  readonly strip: Strip;
  readonly name: string;
  readonly low: string;
  readonly high: string;
  readonly missing?: string;
  readonly figures?: string;
  /** The whole strip as sentences, for reading aloud. */
  readonly spoken: string;
}

export interface TasksText {
  readonly heading: string;
  readonly safety: readonly string[];
  readonly gentle: readonly TaskText[];
  /** Above the moving tasks: a box for the fitter to tick. */
  readonly tick?: string;
  readonly moving: readonly TaskText[];
  /** Letters to tick for. */
  readonly letters: readonly string[];
}
export interface TaskText {
  readonly name: string;
  readonly feel: string;
}

export interface SizeText {
  readonly heading: string;
  readonly rows: readonly { readonly name: string; readonly value: string }[];
  /** Why a box to fetch bears another size than the calculated one. */
  readonly differs?: string;
  readonly notes: readonly string[];
  readonly foot?: { readonly left?: FootText; readonly right?: FootText; readonly title: string };
}
export interface FootText {
  readonly name: string;
  readonly length: string;
  readonly ball?: string;
}

export interface NotesText {
  /** Boxes to tick for the pair chosen. */
  readonly choices: readonly string[];
  readonly lines: readonly string[];
}

export interface CautionsText {
  readonly level: CautionLevel;
  readonly heading: string;
  readonly items: readonly { readonly text: string; readonly backing?: string }[];
}

export interface EaseInText {
  readonly heading: string;
  readonly why: readonly string[];
  /** What the figures count. */
  readonly caption: string;
  /** "Week", then the weeks: `1 to 2`, `3`, `4 and on`. */
  readonly weeks: readonly string[];
  /** A pair's letter, then its share for each of the weeks. */
  readonly rows: readonly (readonly string[])[];
  readonly rest: string;
}

/** What was done at the bench, as it was written down there. */
export interface BenchRecordText {
  readonly decision: ListText;
  readonly tried: TableText;
  readonly feet: TableText;
  readonly changes: {
    readonly heading: string;
    readonly items: readonly { readonly ask: string; readonly said: string }[];
  };
  /** A clinician's word that lifted a stop. */
  readonly cleared?: string;
}
/** Names beside values, a column for each thing compared. No rows: nothing to say. */
export interface TableText {
  readonly heading: string;
  readonly columns: readonly string[];
  readonly rows: readonly { readonly name: string; readonly cells: readonly string[] }[];
  readonly notes: readonly string[];
}

export interface BenchText extends BenchRecordText {
  readonly heading: string;
  readonly hold: string;
  /** Each with the numbers of its reasons. */
  readonly needs: readonly { readonly name: string; readonly range: string; readonly why: string }[];
  /** Each said once, under what it is traced to; its number is its place among all of them, from 1. */
  readonly reasons: {
    readonly heading: string;
    readonly groups: readonly { readonly from: string; readonly items: readonly string[] }[];
  };
  readonly musts: ListText;
  readonly unknown: ListText;
  readonly sources: ListText;
  readonly note?: string;
}
