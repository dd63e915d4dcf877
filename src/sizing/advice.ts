import type { Box } from '../stock/shoe.ts';
import type { Finding } from '../units/result.ts';
import type { AlsoLabelled } from './also-labelled.ts';
import type { Growth } from './growth.ts';
import type { Width } from './width.ts';

/** What size to fetch, and how sure that is. */
export interface SizeAdvice {
  /** What it rests on; `none` means: measure first. */
  readonly from: 'measured' | 'insole' | 'box-label' | 'none';
  /** Deciding (longer) foot, millimetres. */
  readonly footLength?: number;
  /** Millimetres between the two feet, when both were measured. */
  readonly difference?: number;
  /** Half-width of the doubt, millimetres: 2 means ±2 mm. Words: `size.doubt.<doubtWord(doubt)>`. */
  readonly doubt: number;
  /** Space wanted in front of the longest toe, millimetres. */
  readonly toeRoom: readonly [number, number];
  /** Least space that is let pass, millimetres: 10, or less where the activity wants a close fit. */
  readonly leastRoom?: number;
  /** Wanted inner length of the shoe, millimetres. */
  readonly innerLength?: readonly [number, number];
  /** Formula sizes, nearest half; absent without a foot length. */
  readonly labels?: FormulaLabels;
  /** What else boxes for this foot may say, where sources disagree: for the fitter. */
  readonly also?: readonly AlsoLabelled[];
  /** How wide the foot is for its length, when girth or width was measured. */
  readonly width?: Width;
  /** Foot length that the ball length would suggest, less the foot's own, millimetres: bench detail. */
  readonly archDifference?: number;
  /** Children only: how fast feet grow at this age, and when to look again. */
  readonly growth?: Growth;
  /** Longer foot by 6 mm, measured seated, feet too far apart to be true… Words: `finding.<code>`. */
  readonly findings: readonly Finding[];
}

export interface FormulaLabels {
  readonly mondopoint: string;
  readonly eu: string;
  readonly uk: string;
  readonly usMen: string;
  readonly usWomen: string;
  /** Only where the foot is on the child scales. */
  readonly ukChild?: string;
  readonly usChild?: string;
}

/** How a box stands to the advice. */
export interface BoxFit {
  readonly box: Box;
  readonly fits: 'yes' | 'maybe' | 'no';
  /** Inner length minus the middle of the wanted range, millimetres; + is longer. */
  readonly off: number;
  /** What it was judged by, most trusted first. */
  readonly by: 'inner-length' | 'mondopoint' | 'label-with-offset' | 'formula';
  /** Half-width of what the box leaves in doubt, millimetres. */
  readonly doubt?: number;
  /** Marks that contradict each other, nothing to judge by… */
  readonly findings?: readonly Finding[];
}
