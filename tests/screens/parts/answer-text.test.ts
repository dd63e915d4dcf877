import { describe, expect, it } from 'vitest';
import { answerText } from '../../../src/card/text/answer-text.ts';
import type { Answer } from '../../../src/flow/answers.ts';
import { questionsOf } from '../../../src/flow/route.ts';
import { offeredWithLabels } from '../../../src/screens/parts/option-labels.ts';
import { wordsOf } from '../../../src/words/words-of.ts';
import { FITTING, FITTING_TABLES } from '../../flow/fitting.ts';
import { allWords, LANGUAGES } from '../../words/word-files.ts';

const inWords = (language: string) => wordsOf(language, [allWords(language)]);
const question = (id: string) => {
  const found = questionsOf(FITTING).find((each) => each.id === id);
  if (!found) throw new Error(`No question ${id}`);
  return found;
};
const said = (id: string, answer: Answer, language = 'en') => answerText(question(id), answer, inWords(language));

describe('an answer is said back as a person would say it', () => {
  it.each<[string, Answer, string]>([
    ['reason', 'worn-out', 'My pair is worn out'],
    ['now-size', { value: 42.5, unit: 'eu' }, 'EU 42.5'],
    ['now-size', { value: 42.667, unit: 'eu' }, 'EU 42 2/3'],
    ['now-size', { value: 20.5, unit: 'cm' }, '20.5 cm'],
    ['now-size', 'not-sure', 'Not sure'],
    ['body', {}, 'Nothing'],
    ['body', 'skipped', 'Left out'],
    ['liking', { cushion: 'no-preference' }, "I don't mind"],
    ['worn-to-and-from', 'not-sure', 'Not sure'],
  ])('%s %j', (id, answer, expected) => {
    expect(said(id, answer)).toContain(expected);
  });

  it('writes a half size with the comma of the language', () => {
    expect(said('now-size', { value: 42.5, unit: 'eu' }, 'de')).toContain('42,5');
  });

  it('names each place that hurts, when it last did, and whether a clinician checked it', () => {
    const text = said('body', { heel: { when: 'now', seen: false }, knee: { when: 'this-year', seen: true } });
    expect(text).toMatch(/heel.*right now, not checked.*knee.*this year, checked/i);
  });

  it('says how often beside each floor, and nothing beside an answer that stands alone', () => {
    expect(said('floors', { tiles: 'mostly', mat: 'now-and-then' })).toMatch(/: Mostly · .*: Now and then/);
    expect(said('floors', { 'not-sure': 'mostly' })).not.toContain('Mostly');
  });
});

describe('choices on offer', () => {
  it.each(LANGUAGES)('have words in %s, each its own', (language) => {
    for (const each of questionsOf(FITTING)) {
      const labels = offeredWithLabels(each, FITTING_TABLES, {}, inWords(language)).map(({ label }) => label);
      expect(
        labels.filter((label) => label.trim() === ''),
        each.id,
      ).toEqual([]);
      expect(new Set(labels).size, each.id).toBe(labels.length);
    }
  });

  it('a second activity leaves out the first', () => {
    const offered = offeredWithLabels(
      question('second-activity'),
      FITTING_TABLES,
      { activity: 'netball' },
      inWords('en'),
    );
    expect(offered.some(({ id }) => id === 'netball')).toBe(false);
    expect(offered.some(({ id }) => id === 'volleyball')).toBe(true);
  });
});
