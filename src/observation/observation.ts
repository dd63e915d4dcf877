/** What the fitter saw or measured. Everything is optional: a measurement not taken is absent, never zero. */
export interface Observation {
  readonly feet?: Feet;
  readonly oldPair?: OldPair;
  readonly roll?: Roll;
  /** Bench notes a fitter wants carried to the copy. */
  readonly note?: string;
}

export const FOOT_MEASURES = ['length', 'ballLength', 'ballGirth', 'width', 'heelWidth', 'instep'] as const;
export type FootMeasure = (typeof FOOT_MEASURES)[number];
/**
 * Millimetres. Length: heel to the longest toe. Ball length: heel to the inner ball joint. Girth: tape round the ball
 * joints. Instep: tape over the instep.
 */
export type Foot = Readonly<Partial<Record<FootMeasure, number>>>;

export interface Feet {
  readonly left?: Foot;
  readonly right?: Foot;
  /** ISO 9407 measures standing, weight on both feet. */
  readonly posture: 'standing' | 'seated' | 'one-foot';
  readonly sock: 'worn-sock' | 'thin-sock' | 'barefoot';
  readonly time?: 'morning' | 'midday' | 'late';
  /** Measured again and found the same, after the kiosk asked about numbers that looked odd. */
  readonly checked?: boolean;
}

/** Wear, as seen. It notes and diagnoses nothing. */
export interface OldPair {
  /** Inner length by the removed insole, millimetres. */
  readonly insoleLength?: number;
  /** Toe print: millimetres between the print of the longest toe and the insole's end. */
  readonly toePrintGap?: number;
  readonly spill?: 'none' | 'inner' | 'outer' | 'both';
  readonly bulge?: 'none' | 'inner' | 'outer';
  readonly heelLining?: 'whole' | 'worn' | 'torn';
  readonly soleWear?: 'even' | 'outer-heel' | 'inner-heel' | 'forefoot' | 'toe' | 'worn-out';
  /** Figures measured on the shoe worn today, in the units of the attribute table. */
  readonly measured?: Readonly<Partial<Record<'mass' | 'heel-stack' | 'forefoot-stack' | 'drop', number>>>;
}

/** Foot roll seen while moving, judged by eye. Observers agree poorly; alone it changes no line-up. */
export interface Roll {
  readonly left: RollSeen;
  readonly right: RollSeen;
  readonly by: string;
  readonly during: 'own-movement' | 'walk';
}
export const ROLL_SEEN = ['not-told', 'in', 'even', 'out'] as const;
export type RollSeen = (typeof ROLL_SEEN)[number];
