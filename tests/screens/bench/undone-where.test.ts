import { expect, test } from 'vitest';
import { changedPart } from '../../../src/screens/fitter/undone-where.ts';
import { visit } from './toy-visit.ts';

test('a fitter hears in which part of the ticket the step was that Undo takes back', () => {
  const tried = { ...visit, tryOns: [{ shoe: 'a', box: 'b', notes: {}, rubs: [] }] };
  const feet = { left: { length: 262 }, posture: 'standing', sock: 'worn-sock' } as const;
  const measured = { ...visit, observation: { feet } };
  const changed = { ...visit, overrides: [{ question: 'floor', value: 'mud', by: 'MK', reason: 'asked-again' }] };
  const chosen = { ...visit, choice: { kind: 'pair', shoe: 'a', box: 'b' } } as const;
  expect([tried, measured, changed, chosen].map((after) => changedPart({ visit }, { visit: after }))).toEqual([
    'feet',
    'measure',
    'profile',
    'decide',
  ]);
  expect(changedPart({ visit }, { visit, bench: { aside: [], pulledIn: ['a'] } })).toBe('line-up');
  expect(changedPart({ visit }, { visit: { ...visit } })).toBeUndefined();
});
