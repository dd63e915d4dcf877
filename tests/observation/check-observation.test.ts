import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkObservation } from '../../src/observation/check-observation.ts';

const SOUND = {
  feet: {
    left: { length: 262, ballLength: 194, ballGirth: 250, width: 100, heelWidth: 70, instep: 255 },
    right: { length: 265 },
    posture: 'standing',
    sock: 'worn-sock',
    time: 'late',
  },
  oldPair: { insoleLength: 280, toePrintGap: 12, spill: 'outer', heelLining: 'torn', measured: { mass: 290, drop: 8 } },
  roll: { left: 'in', right: 'not-told', by: 'fitter', during: 'walk' },
  note: 'high instep',
};

describe('an observation from outside', () => {
  test('comes through whole when it is sound', () => {
    expect(checkObservation(SOUND)).toEqual({ value: SOUND, findings: [] });
  });

  test('a length in centimetres is asked about and the rest kept', () => {
    const { value, findings } = checkObservation({ feet: { ...SOUND.feet, left: { length: 26, width: 100 } } });
    expect(value?.feet?.left).toEqual({ width: 100 });
    expect(value?.feet?.right).toEqual({ length: 265 });
    expect(findings).toEqual([
      {
        code: 'measure-other-unit',
        severity: 'error',
        at: 'feet.left.length',
        value: '26',
        data: { number: 26, unit: 'mm', guess: 26, guessUnit: 'cm' },
      },
    ]);
  });

  test.each([
    [{ feet: { ...SOUND.feet, left: { length: 2620 } } }, 'measure-other-unit', 'feet.left.length'],
    [{ feet: { ...SOUND.feet, left: { length: '26,2' } } }, 'observation-not-a-number', 'feet.left.length'],
    [{ feet: { ...SOUND.feet, left: { length: 1 } } }, 'measure-out-of-range', 'feet.left.length'],
    [{ feet: { ...SOUND.feet, posture: 'lying' } }, 'observation-not-a-choice', 'feet.posture'],
    [{ feet: { left: { length: 262 }, sock: 'barefoot' } }, 'observation-missing', 'feet.posture'],
    [{ feet: { ...SOUND.feet, middle: {} } }, 'observation-unknown', 'feet.middle'],
    [{ feet: [] }, 'observation-not-an-object', 'feet'],
    [{ feet: { ...SOUND.feet, checked: 'yes' } }, 'observation-not-a-choice', 'feet.checked'],
    [{ oldPair: { spill: 'everywhere' } }, 'observation-not-a-choice', 'oldPair.spill'],
    [{ oldPair: { toePrintGap: -4 } }, 'measure-out-of-range', 'oldPair.toePrintGap'],
    [{ oldPair: { measured: { mass: 29 } } }, 'measure-out-of-range', 'oldPair.measured.mass'],
    [{ roll: { ...SOUND.roll, left: 'sideways' } }, 'observation-not-a-choice', 'roll.left'],
    [{ note: 'x'.repeat(501) }, 'observation-not-text', 'note'],
    [null, 'observation-not-an-object', 'observation'],
  ])('a slip is named by its path: %#', (input, code, at) => {
    expect(checkObservation(input).findings).toContainEqual(expect.objectContaining({ code, at }));
  });

  test('how feet were measured, where not said, is taken to be the less trusted way', () => {
    expect(checkObservation({ feet: { left: { length: 262 } } }).value?.feet).toMatchObject({
      posture: 'seated',
      sock: 'barefoot',
    });
  });

  test('any JSON at all gives findings or a value that passes again, and never throws', () => {
    const key = fc.constantFrom(
      'feet',
      'left',
      'right',
      'length',
      'posture',
      'sock',
      'oldPair',
      'measured',
      'mass',
      'roll',
      'by',
      'note',
      '__proto__',
    );
    const tree = fc.letrec<{ node: unknown }>((tie) => ({
      node: fc.oneof({ depthSize: 'small' }, fc.jsonValue(), fc.dictionary(key, tie('node'), { maxKeys: 4 })),
    }));
    fc.assert(
      fc.property(tree.node, (input) => {
        const first = checkObservation(input);
        if (first.value === undefined) expect(first.findings.length).toBeGreaterThan(0);
        else expect(checkObservation(first.value)).toEqual({ value: first.value, findings: [] });
      }),
      { numRuns: 1000 },
    );
  });
});
