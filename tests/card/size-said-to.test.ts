import { expect, test } from 'vitest';
import { textOf } from '../../src/card/text/text-of.ts';
import { sampleFacts, sampleWords } from './sample-lines.ts';

const measured = {
  observation: {
    feet: { left: { length: 252 }, right: { length: 244 }, posture: 'standing', sock: 'worn-sock', time: 'midday' },
  },
} as const;
const size = (copy: 'customer' | 'fitter') => {
  const { size: said } = textOf(sampleFacts('netball-old-sprain', copy, measured), sampleWords('en'));
  return [said?.heading, ...(said?.notes ?? [])].join(' ');
};

test('whose feet were measured reads of their own left foot; the fitter reads of the left foot', () => {
  expect(size('customer')).toContain('Your size Your left foot is 8 mm longer.');
  expect(size('fitter')).toContain('Size The left foot is 8 mm longer.');
  expect(size('fitter')).not.toMatch(/\byour\b/i);
});
