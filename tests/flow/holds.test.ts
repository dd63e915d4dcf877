import { expect, test } from 'vitest';
import type { Condition } from '../../src/flow/condition.ts';
import { holds } from '../../src/flow/holds.ts';

const VALUES = {
  reason: 'worn-out',
  size: { value: 42.5, unit: 'eu' },
  floors: { asphalt: 'mostly', grass: 'some' },
  troubles: ['rubs-heel', 'too-heavy'],
  body: { heel: { when: 'now', seen: false } },
  liking: { cushion: 'no-preference', weight: 'same' },
  unmoved: { cushion: 'no-preference', weight: 'no-preference' },
  'nothing-said': {},
  load: 0.4,
  minor: true,
} as const;

const CASES: readonly (readonly [Condition, boolean])[] = [
  [{ of: 'reason', is: 'worn-out' }, true],
  [{ of: 'reason', is: 'same-again' }, false],
  [{ of: 'reason', anyOf: ['same-again', 'worn-out'] }, true],
  [{ of: 'minor', is: true }, true],
  [{ of: 'load', is: 0.4 }, true],
  [{ of: 'load', atLeast: 0.4 }, true],
  [{ of: 'load', upTo: 0.3 }, false],
  [{ of: 'size', atLeast: 42 }, true],
  [{ of: 'size', upTo: 42.5 }, true],
  [{ of: 'size', is: 42.5 }, true],
  [{ of: 'size', includes: 'value' }, false],
  [{ of: 'troubles', includes: 'rubs-heel' }, true],
  [{ of: 'troubles', includes: 'wobbles' }, false],
  [{ of: 'troubles', is: 'rubs-heel' }, false],
  [{ of: 'floors', includes: 'grass' }, true],
  [{ of: 'troubles', includesAny: ['wobbles', 'too-heavy'] }, true],
  [{ of: 'troubles', includesAny: ['wobbles', 'too-soft'] }, false],
  [{ of: 'floors', includesAny: ['mud', 'grass'] }, true],
  [{ of: 'reason', includesAny: ['worn', 'worn-out'] }, false],
  [{ of: 'nowhere', includesAny: ['grass'] }, false],
  [{ of: 'body', includes: 'heel' }, true],
  [{ of: 'body', includes: 'toString' }, false],
  [{ of: 'reason', includes: 'worn' }, false],
  [{ of: 'floors', anyBut: 'mostly' }, true],
  [{ of: 'liking', anyBut: 'no-preference' }, true],
  [{ of: 'unmoved', anyBut: 'no-preference' }, false],
  [{ of: 'nothing-said', anyBut: 'no-preference' }, false],
  [{ of: 'reason', anyBut: 'no-preference' }, false],
  [{ of: 'troubles', anyBut: 'rubs-heel' }, false],
  [{ of: 'size', anyBut: 'uk' }, false],
  [{ of: 'body', anyBut: 'now' }, false],
  [{ of: 'reason', atLeast: 1 }, false],
  [{ answered: 'reason' }, true],
  [{ answered: 'nothing' }, false],
  [{ answered: 'constructor' }, false],
  [{ not: { of: 'nothing', is: 'x' } }, true],
  [{ all: [{ answered: 'reason' }, { of: 'minor', is: true }] }, true],
  [{ any: [{ answered: 'nothing' }, { of: 'minor', is: false }] }, false],
];

for (const [condition, expected] of CASES) {
  test(`${JSON.stringify(condition)} is ${expected}`, () => expect(holds(condition, VALUES)).toBe(expected));
}

test('the example in the docs', () => {
  expect(holds({ of: 'size', atLeast: 42 }, { size: { value: 42.5, unit: 'eu' } })).toBe(true);
  expect(holds({ not: { of: 'reason', is: 'worn-out' } }, {})).toBe(true);
});
