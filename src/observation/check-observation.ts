import type { Finding, Reading } from '../units/result.ts';
import { otherUnit } from '../units/typed-measure.ts';
import { booleanAt, choiceAt, given, type Loose, objectAt, shown, textAt, unknownKeys, wrong } from './check-parts.ts';
import { INSOLE_RANGE, MEASURE_RANGES, TOE_PRINT_GAP_RANGE } from './measure-ranges.ts';
import {
  type Feet,
  FOOT_MEASURES,
  type Foot,
  type Observation,
  type OldPair,
  ROLL_SEEN,
  type Roll,
} from './observation.ts';

/** What a shoe worn today can measure, in the attribute table's units: grams, then millimetres (common practice). */
export const SHOE_RANGES = {
  mass: [50, 1500],
  'heel-stack': [0, 80],
  'forefoot-stack': [0, 80],
  drop: [-10, 30],
} as const;

/**
 * Checks an observation that came from outside: a file, a code, a form.
 *
 * What is sound is kept and what is not is left out with a finding that names it by its path (`feet.left.length`), so
 * that one slip does not cost the rest. A length that would make sense in another unit is asked about, never changed.
 *
 * @example checkObservation({ feet: { left: { length: 26 }, posture: 'standing', sock: 'worn-sock' } })
 * // value { feet: { left: {}, … } }, finding measure-other-unit at feet.left.length, guess 26 cm
 */
export function checkObservation(input: unknown): Reading<Observation> {
  const findings: Finding[] = [];
  const value = objectAt(input, 'observation', findings);
  if (value === undefined) return { findings };
  unknownKeys(value, ['feet', 'oldPair', 'roll', 'note'], '', findings);
  const feet = value['feet'] === undefined ? undefined : checkFeet(value['feet'], findings);
  const oldPair = value['oldPair'] === undefined ? undefined : checkOldPair(value['oldPair'], findings);
  const roll = value['roll'] === undefined ? undefined : checkRoll(value['roll'], findings);
  const note = value['note'] === undefined ? undefined : textAt(value['note'], 'note', findings);
  return {
    value: { ...given('feet', feet), ...given('oldPair', oldPair), ...given('roll', roll), ...given('note', note) },
    findings,
  };
}

function checkFeet(input: unknown, findings: Finding[]): Feet | undefined {
  const value = objectAt(input, 'feet', findings);
  if (value === undefined) return undefined;
  unknownKeys(value, ['left', 'right', 'posture', 'sock', 'time', 'checked'], 'feet.', findings);
  const posture = choiceAt(value, 'posture', 'feet.', findings);
  const sock = choiceAt(value, 'sock', 'feet.', findings);
  for (const [name, found] of [
    ['posture', posture],
    ['sock', sock],
  ] as const) {
    if (found === undefined && value[name] === undefined) {
      findings.push({ code: 'observation-missing', severity: 'error', at: `feet.${name}` });
    }
  }
  // How it was measured decides how far to trust it, so without it the more careful reading is taken.
  return {
    ...given('left', value['left'] === undefined ? undefined : checkFoot(value['left'], 'feet.left', findings)),
    ...given('right', value['right'] === undefined ? undefined : checkFoot(value['right'], 'feet.right', findings)),
    posture: posture ?? 'seated',
    sock: sock ?? 'barefoot',
    ...given('time', choiceAt(value, 'time', 'feet.', findings)),
    ...given('checked', booleanAt(value['checked'], 'feet.checked', findings)),
  };
}

function checkFoot(input: unknown, at: string, findings: Finding[]): Foot | undefined {
  const value = objectAt(input, at, findings);
  if (value === undefined) return undefined;
  unknownKeys(value, FOOT_MEASURES, `${at}.`, findings);
  return numbers(value, MEASURE_RANGES, `${at}.`, findings);
}

function checkOldPair(input: unknown, findings: Finding[]): OldPair | undefined {
  const value = objectAt(input, 'oldPair', findings);
  if (value === undefined) return undefined;
  const wear = ['spill', 'bulge', 'heelLining', 'soleWear'] as const;
  unknownKeys(value, ['insoleLength', 'toePrintGap', 'measured', ...wear], 'oldPair.', findings);
  const measured =
    value['measured'] === undefined ? undefined : objectAt(value['measured'], 'oldPair.measured', findings);
  if (measured !== undefined) unknownKeys(measured, Object.keys(SHOE_RANGES), 'oldPair.measured.', findings);
  return {
    ...numbers(value, { insoleLength: INSOLE_RANGE, toePrintGap: TOE_PRINT_GAP_RANGE }, 'oldPair.', findings),
    ...given('spill', choiceAt(value, 'spill', 'oldPair.', findings)),
    ...given('bulge', choiceAt(value, 'bulge', 'oldPair.', findings)),
    ...given('heelLining', choiceAt(value, 'heelLining', 'oldPair.', findings)),
    ...given('soleWear', choiceAt(value, 'soleWear', 'oldPair.', findings)),
    ...given('measured', measured && numbers(measured, SHOE_RANGES, 'oldPair.measured.', findings)),
  };
}

function checkRoll(input: unknown, findings: Finding[]): Roll | undefined {
  const value = objectAt(input, 'roll', findings);
  if (value === undefined) return undefined;
  unknownKeys(value, ['left', 'right', 'by', 'during'], 'roll.', findings);
  const side = (name: 'left' | 'right') => ROLL_SEEN.find((seen) => seen === value[name]);
  const [left, right] = [side('left'), side('right')];
  const during = choiceAt(value, 'during', 'roll.', findings);
  const by = textAt(value['by'], 'roll.by', findings);
  if (left === undefined) findings.push(wrong('roll.left', value['left'], ROLL_SEEN));
  if (right === undefined) findings.push(wrong('roll.right', value['right'], ROLL_SEEN));
  if (left === undefined || right === undefined || during === undefined || by === undefined) return undefined;
  return { left, right, by, during };
}

/** The numbers of `ranges` found in `value`, each within its range. */
function numbers<K extends string>(
  value: Loose,
  ranges: Readonly<Record<K, readonly [number, number]>>,
  path: string,
  findings: Finding[],
): Partial<Record<K, number>> {
  const kept: Partial<Record<K, number>> = {};
  for (const key of Object.keys(ranges) as K[]) {
    const number = value[key];
    if (number === undefined) continue;
    const [from, to] = ranges[key];
    if (typeof number === 'number' && number >= from && number <= to) kept[key] = number;
    else findings.push(oddNumber(number, from, to, path + key));
  }
  return kept;
}

function oddNumber(number: unknown, from: number, to: number, at: string): Finding {
  const base = { severity: 'error', at, value: shown(number) } as const;
  if (typeof number !== 'number' || !Number.isFinite(number)) return { ...base, code: 'observation-not-a-number' };
  const guess =
    at.startsWith('feet.') || at.endsWith('.insoleLength') ? otherUnit(number, 'mm', { from, to }) : undefined;
  return guess === undefined
    ? { ...base, code: 'measure-out-of-range', data: { number, unit: at.endsWith('.mass') ? 'g' : 'mm', from, to } }
    : { ...base, code: 'measure-other-unit', data: { number, unit: 'mm', guess: guess.value, guessUnit: guess.unit } };
}
