import { describe, expect, it } from 'vitest';
import { asMeasured } from '../../src/attributes/as-measured.ts';

describe('a range told to a fitter, on the screen and on paper', () => {
  it('is told as finely as a hand can measure it', () => {
    expect(asMeasured('mass', [277.4, 386.7])).toEqual([275, 385]);
    expect(asMeasured('heel-stack', [15.4, 25.3])).toEqual([15.5, 25.5]);
    expect(asMeasured('platform-width', [83.3, 95.6])).toEqual([83, 96]);
  });

  it('leaves the steps of a judged property to words', () => {
    expect(asMeasured('cushion', [2.25, 3.5])).toEqual([2.25, 3.5]);
  });
});
