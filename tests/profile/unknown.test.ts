import { describe, expect, it } from 'vitest';
import { ask, rule, withRules } from './toy-knowledge.ts';
import { profileOfAnswers } from './toy-visit.ts';

const knowledge = withRules(
  rule('wet', { basis: 'floor', when: { of: 'wet', is: 'often' }, asks: [ask('lug-depth', [2, 4], 0.3)] }),
  rule('hard', { when: { answered: 'activity' }, asks: [ask('cushion', [3, 4], 0.9, 'floor-hardness')] }),
  rule('cap', {
    basis: 'place',
    when: { of: 'place-rules', includes: 'slip-mark' },
    musts: [{ attribute: 'safety-marks', value: 'slip' }],
  }),
  rule('deep', {
    when: {
      all: [
        { of: 'activity-group', is: 'hills' },
        { of: 'hours', is: 'over-10' },
      ],
    },
    asks: [ask('cushion', [4, 5], 0.9)],
  }),
);

describe('what is not known yet', () => {
  it('stands by how much it could still change', () => {
    const { unknown } = profileOfAnswers({ activity: 'tennis', floors: { 'not-sure': 'mostly' } }, knowledge);
    expect(unknown).toEqual(['place-rules', 'floors', 'wet']);
  });
  it('leaves out a question that could change nothing as things stand', () => {
    expect(profileOfAnswers({ activity: 'tennis' }, knowledge).unknown).not.toContain('hours');
    expect(profileOfAnswers({ activity: 'backpacking' }, knowledge).unknown).toContain('hours');
  });
  it('names an answer that nobody was sure of, and never one that somebody would rather not give', () => {
    const answers = { activity: 'tennis', wet: 'not-sure', floors: { grass: 'mostly' }, 'place-rules': ['none'] };
    expect(profileOfAnswers(answers, knowledge).unknown).toEqual(['wet']);
    expect(profileOfAnswers({ ...answers, signs: ['rather-not-say'] }, knowledge).unknown).not.toContain('signs');
  });
});
