import { DIFFERENCE_SAID, longerFoot } from '../observation/longer-foot.ts';
import type { Feet } from '../observation/observation.ts';
import type { Finding } from '../units/result.ts';
import { archDifference, LOOK_WHERE_IT_BENDS } from './arch-length.ts';

function note(code: string, data?: Finding['data']): Finding {
  return { code, severity: 'note', ...(data === undefined ? {} : { data }) };
}

/**
 * What is said about how the feet were measured and how they differ.
 *
 * `uneven` is a heel lift or a prosthesis: then what differs is not the feet, and no difference is said. Nothing is
 * said of either, as these notes stand on the customer's card.
 */
export function feetNotes(feet: Feet, uneven: boolean): readonly Finding[] {
  const longer = longerFoot(feet);
  if (longer === undefined) return [];
  const { side, difference = 0 } = longer;
  const said = difference > DIFFERENCE_SAID && !uneven;
  return [
    ...(said && side === 'left' ? [note('left-longer', { mm: tenths(difference) })] : []),
    ...(said && side === 'right' ? [note('right-longer', { mm: tenths(difference) })] : []),
    ...(side === 'only-left' || side === 'only-right' ? [note('one-foot-measured')] : []),
    ...(feet.posture === 'seated' ? [note('measured-seated')] : []),
    ...(feet.posture === 'one-foot' ? [note('measured-on-one-foot')] : []),
    ...(feet.sock !== 'worn-sock' ? [note('try-with-sock')] : []),
    ...(feet.time === 'morning' ? [note('measured-early')] : []),
    ...(feet.time === 'late' ? [note('measured-late')] : []),
  ];
}

/**
 * Foot length that the longer foot's ball length suggests, less its own, millimetres; of equally long feet the larger
 * difference. No answer if not measured.
 */
export function archOf(feet: Feet): number | undefined {
  const longer = longerFoot(feet);
  if (longer === undefined) return undefined;
  const sides =
    longer.side === 'both'
      ? (['left', 'right'] as const)
      : ([longer.side.endsWith('left') ? 'left' : 'right'] as const);
  const differences = sides.flatMap((side) => {
    const { length, ballLength } = feet[side] ?? {};
    return length === undefined || ballLength === undefined ? [] : [archDifference(length, ballLength)];
  });
  const [most] = differences.toSorted((a, b) => Math.abs(b) - Math.abs(a) || b - a);
  return most === undefined ? undefined : tenths(most);
}

/** A ball that lies far from where a foot of this length has it, or on the two feet far apart: look where the shoe bends. */
export function bendNotes(feet: Feet): readonly Finding[] {
  const arch = archOf(feet) ?? 0;
  const left = feet.left?.ballLength;
  const right = feet.right?.ballLength;
  const apart = left === undefined || right === undefined ? 0 : Math.abs(left - right);
  const most = Math.max(Math.abs(arch), apart);
  return most > LOOK_WHERE_IT_BENDS ? [note('look-where-it-bends', { mm: tenths(most) })] : [];
}

/** How sure the size is, in a word. Words: `size.doubt.<word>`. Two boxes are brought whatever the word where they help. */
export function doubtWord(doubt: number): 'sure' | 'fair' | 'rough' {
  if (doubt <= 2) return 'sure';
  return doubt <= 5 ? 'fair' : 'rough';
}

function tenths(value: number): number {
  return Math.round(value * 10) / 10;
}
