import { describe, expect, test } from 'vitest';
import type { Observation } from '../../../src/observation/observation.ts';
import { withFeet, withFoot, withOldPair, withShoe } from '../../../src/screens/fitter/measure/changed.ts';
import { History } from '../../../src/screens/fitter/measure/history.ts';

describe('an entry at the bench', () => {
  test('withFoot: the first length is taken as measured standing, in the sock to be worn', () => {
    expect(withFoot({}, 'left', 'length', 265).feet).toEqual({
      left: { length: 265 },
      posture: 'standing',
      sock: 'worn-sock',
    });
  });

  test('leaves every other entry alone, and a foot without measures is no foot', () => {
    const before: Observation = { feet: { left: { length: 262 }, posture: 'seated', sock: 'barefoot' }, note: 'x' };
    const both = withFoot(before, 'right', 'width', 101);
    expect(both).toEqual({ ...before, feet: { ...before.feet, right: { width: 101 } } });
    expect(withFoot(both, 'right', 'width', undefined)).toEqual(before);
    expect(before.feet).not.toHaveProperty('right');
  });

  test('another length takes back that odd feet were checked; another width does not', () => {
    const checked = withFeet(withFoot({}, 'left', 'length', 240), 'checked', true);
    expect(withFoot(checked, 'right', 'width', 90).feet?.checked).toBe(true);
    expect(withFoot(checked, 'right', 'length', 265).feet).not.toHaveProperty('checked');
  });

  test('an old pair of which nothing is left noted is gone', () => {
    const noted = withShoe(withOldPair({}, 'spill', 'outer'), 'mass', 280);
    expect(noted).toEqual({ oldPair: { spill: 'outer', measured: { mass: 280 } } });
    expect(withOldPair(withShoe(noted, 'mass', undefined), 'spill', undefined)).toEqual({});
  });
});

test('what was changed can be undone, last first', () => {
  const history = new History<number>();
  expect(history.last).toBeUndefined();
  history.keep(1, 'left');
  history.keep(2, 'right');
  expect(history.last).toBe('right');
  expect(history.back()).toBe(2);
  expect(history.back()).toBe(1);
  expect(history.back()).toBeUndefined();
  history.keep(1, 'left');
  history.clear();
  expect(history.last).toBeUndefined();
});
