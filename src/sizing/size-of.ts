import type { Feet } from '../observation/observation.ts';
import type { FormulaLabels, SizeAdvice } from './advice.ts';
import { type SizeInput, sizeAdvice } from './size-advice.ts';

/** Size advice as one flat object for scripts: labels beside lengths. Keys are stable; more may be added. */
export type SizeReport = Omit<SizeAdvice, 'labels'> & Partial<FormulaLabels>;

/** What may be said beside two foot lengths. Ball length and girth belong to the longer foot. */
export interface SizeOptions extends Pick<SizeInput, 'activityRoom' | 'ageBand' | 'shelf' | 'inside'> {
  readonly ball?: number | undefined;
  readonly girth?: number | undefined;
  readonly width?: number | undefined;
  readonly posture?: Feet['posture'] | undefined;
  readonly sock?: Feet['sock'] | undefined;
  /** Feet far apart were measured again and are so. */
  readonly checked?: boolean | undefined;
}

/**
 * The size of two feet, millimetres, standing in the sock to be worn unless said otherwise. One foot may be left out.
 *
 * @example sizeOf(262, 265) // { footLength: 265, mondopoint: '265', eu: '42', uk: '8.5', usMen: '9.5', usWomen: '10.5',
 * //   toeRoom: [10, 15], innerLength: [275, 280], findings: [], … }
 */
export function sizeOf(left: number | undefined, right: number | undefined, options: SizeOptions = {}): SizeReport {
  const { ball, girth, width, posture = 'standing', sock = 'worn-sock', checked, ...rest } = options;
  const detail = { ballLength: ball, ballGirth: girth, width };
  const onLeft = right === undefined || (left !== undefined && left > right);
  const feet: Feet = {
    left: given({ length: left, ...(onLeft ? detail : {}) }),
    right: given({ length: right, ...(onLeft ? {} : detail) }),
    posture,
    sock,
    ...(checked === undefined ? {} : { checked }),
  };
  return reportOf(sizeAdvice({ feet, ...rest }));
}

/**
 * Advice as a flat report.
 *
 * @example reportOf(sizeAdvice({})).from // 'none'
 */
export function reportOf({ labels, ...advice }: SizeAdvice): SizeReport {
  return { ...advice, ...labels };
}

function given(values: Readonly<Record<string, number | undefined>>): Readonly<Record<string, number>> {
  return Object.fromEntries(
    Object.entries(values).filter((entry): entry is [string, number] => entry[1] !== undefined),
  );
}
