import { expect, it } from 'vitest';
import { holdOf } from '../../src/profile/hold.ts';

it("holdOf: a clinician's clearance leaves nothing of what stopped the choosing", () => {
  expect(holdOf(['before-choosing'], { cleared: true, 'health-asked': 'asked' })).toBe('none');
  expect(holdOf(['before-choosing', 'today'], { cleared: true, 'health-asked': 'asked' })).toBe('today');
});
