import { describe, expect, it } from 'vitest';
import type { Answers } from '../../../src/flow/answers.ts';
import { fromSaid } from '../../../src/screens/fitter/from-said.ts';
import { wordsOf } from '../../../src/words/words-of.ts';
import { FITTING } from '../../flow/fitting.ts';
import { allWords } from '../../words/word-files.ts';

const words = wordsOf('en', [allWords('en')]);
const said = (from: string, answers: Answers) => fromSaid(from, answers, FITTING, words);

describe('where a reason comes from, as the fitter reads it', () => {
  it('names the answer beside its question', () => {
    expect(said('activity', { activity: 'netball' })).toBe('What will you do most in them? – Netball');
    expect(said('hours', { hours: '6-to-10' })).toMatch(/^How many hours a week\? – \S/);
  });

  it('names of several answers the one that it rests on, and no other', () => {
    expect(said('now-troubles:slips-on-floor', { 'now-troubles': ['slips-on-floor', 'wobbles'] })).toBe(
      'What goes wrong with the pair you have? – Slips on the floor',
    );
  });

  it('names every answer where it rests on the question as a whole', () => {
    expect(said('floors', { floors: { tiles: 'mostly', mat: 'now-and-then' } })).toMatch(
      /: Mostly · .*: Now and then$/,
    );
  });

  it('tells of a place that hurts since when, and of a wish which way', () => {
    const body = { heel: { when: 'now', seen: false }, knee: { when: 'this-year', seen: true } } as const;
    expect(said('body:heel', { body })).toMatch(/– Heel \(right now, not checked\)$/i);
    expect(said('liking:cushion', { liking: { cushion: 'softer', weight: 'lighter' } })).toMatch(/– [^·]*: Softer$/);
  });

  it('keeps to the question where that answer no longer stands, and to the fitter’s eye where no question was asked', () => {
    expect(said('activity', {})).toBe('What will you do most in them?');
    expect(said('now-troubles:wobbles', { 'now-troubles': ['none'] })).not.toContain('–');
    expect(said('observation', {})).toBe('seen by the fitter');
  });
});
