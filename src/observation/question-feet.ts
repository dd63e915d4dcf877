import type { Finding } from '../units/result.ts';
import { larger } from './longer-foot.ts';
import { type Feet, FOOT_MEASURES, type Foot } from './observation.ts';

/**
 * Over this many millimetres apart a slip of the pen is likelier than the feet: nobody is sized by such a pair until
 * somebody has measured again and said so (`checked`). Surveys count differences over 4 and 6 mm; 15 is common practice.
 */
export const FAR_APART = 15;

/** Shortest adults and longest child sizes, millimetres: ANSUR II minima; JIS S 5037 children's sizes end at 260. */
const SHORTEST = { men: 216, women: 198 } as const;
const LONGEST_JUNIOR = 260;

/**
 * Asks about feet that look odd: numbers each possible, but not together.
 *
 * An `error` means that the thing it is about should not be used as it stands; the rest can be.
 *
 * @example questionFeet({ left: { length: 225 }, right: { length: 265 }, posture: 'standing', sock: 'worn-sock' })
 * // [{ code: 'feet-far-apart', severity: 'error', data: { mm: 40 } }]
 */
export function questionFeet(feet: Feet, shelf: 'men' | 'women' | 'junior' | 'any' = 'any'): readonly Finding[] {
  return [
    ...farApart(feet),
    ...(['left', 'right'] as const).flatMap((side) => oddFoot(feet[side] ?? {}, side)),
    ...oddForShelf(larger(feet, 'length'), shelf),
  ];
}

function farApart(feet: Feet): readonly Finding[] {
  const left = feet.left?.length;
  const right = feet.right?.length;
  if (left === undefined || right === undefined || Math.abs(left - right) <= FAR_APART) return [];
  const severity = feet.checked === true ? 'note' : 'error';
  return [{ code: 'feet-far-apart', severity, data: { mm: Math.abs(left - right) } }];
}

/** What cannot be on one foot: a tape round the ball that is shorter than the ball is wide, a ball beyond the toes… */
function oddFoot(foot: Foot, side: 'left' | 'right'): readonly Finding[] {
  const { length, ballLength, ballGirth, width, heelWidth } = foot;
  const odd: [boolean, string, string][] = [
    [under(ballGirth, width), 'girth-below-width', 'ballGirth'],
    [under(length, ballLength), 'ball-beyond-toe', 'ballLength'],
    [under(width, heelWidth), 'heel-wider-than-ball', 'heelWidth'],
    [under(length, width), 'width-beyond-length', 'width'],
  ];
  return odd.flatMap(([is, code, column]) => (is ? [{ code, severity: 'error' as const, at: side, column }] : []));
}

function oddForShelf(length: number | undefined, shelf: string): readonly Finding[] {
  if (length === undefined) return [];
  if (shelf === 'junior' && length > LONGEST_JUNIOR) {
    return [{ code: 'long-for-junior', severity: 'note', data: { mm: length, most: LONGEST_JUNIOR } }];
  }
  const shortest = shelf === 'men' || shelf === 'women' ? SHORTEST[shelf] : 0;
  return length < shortest
    ? [{ code: 'short-for-shelf', severity: 'note', data: { mm: length, least: shortest } }]
    : [];
}

/** `a` should be more than `b`, and is not. */
function under(a: number | undefined, b: number | undefined): boolean {
  return a !== undefined && b !== undefined && a <= b;
}

/**
 * The feet without the measures that an `error` is about, so that what is left can be used.
 * Lengths too far apart both go; of two measures that contradict each other, both go except the length.
 */
export function usableFeet(feet: Feet, findings: readonly Finding[]): Feet {
  const errors = findings.filter((finding) => finding.severity === 'error');
  const noLength = errors.some((finding) => finding.code === 'feet-far-apart');
  const kept = (side: 'left' | 'right'): Foot => {
    const drop = new Set<string>(noLength ? ['length'] : []);
    for (const finding of errors.filter((each) => each.at === side)) {
      drop.add(finding.column ?? '');
      if (finding.code === 'girth-below-width' || finding.code === 'heel-wider-than-ball') drop.add('width');
    }
    const foot = feet[side] ?? {};
    return Object.fromEntries(
      FOOT_MEASURES.filter((measure) => foot[measure] !== undefined && !drop.has(measure)).map((measure) => [
        measure,
        foot[measure],
      ]),
    );
  };
  return { ...feet, left: kept('left'), right: kept('right') };
}
