import { describe, expect, it } from 'vitest';
import { loadKnowledge, loadVisit } from '../../../src/command-line/load.ts';
import type { Answers } from '../../../src/flow/answers.ts';
import { factsOf } from '../../../src/profile/facts.ts';
import { profileOf } from '../../../src/profile/profile-of.ts';
import { holdOfList, holdText } from '../../../src/screens/fitter/hold-text.ts';
import { wordsOf } from '../../../src/words/words-of.ts';
import { allWords } from '../../words/word-files.ts';

const knowledge = loadKnowledge();
const words = wordsOf('en', [allWords('en')]);
const { visit } = loadVisit('flows/fitting/stories/netball-old-sprain.json', knowledge);
const profileWith = (answers: Answers) => {
  const changed = { ...visit, answers: { ...visit.answers, ...answers } };
  return profileOf(factsOf(changed, knowledge), changed, knowledge);
};
const REASSURES = words.say('bench.hold.none');

describe('how careful to be with a visit', () => {
  it('names the ankle twisted lately instead of saying that there is nothing to stop for', () => {
    const lately = profileWith({ ankles: ['over-six-weeks'] });
    expect(lately.hold).toBe('none');
    expect(holdText(lately, words)).toBe('take care: I twisted one in the last six weeks');
  });

  it('says that there is nothing to stop for where health asks for no care', () => {
    const fine = profileWith({ ankles: ['none'] });
    expect(holdText(fine, words)).toBe(REASSURES);
  });

  it('keeps to the stop where there is one', () => {
    const signs = profileWith({ signs: ['hot-swollen-leg'], ankles: ['over-six-weeks'] });
    expect(holdText(signs, words)).toBe(words.say('bench.hold.today'));
  });

  it('never reassures any answer about ankles that raises a caution, in the head or in the list', () => {
    for (const ankles of ['over-six-weeks', 'over-before', 'gives-way']) {
      const profile = profileWith({ ankles: [ankles] });
      expect(profile.cautions.some(({ level, health }) => level === 'mind' && health)).toBe(true);
      expect(holdText(profile, words)).not.toBe(REASSURES);
      expect(holdOfList(profile)).toBe('mind');
    }
  });

  it('says in the list only that something is to be minded, be it an ankle or the floor', () => {
    const floor = profileWith({ ankles: ['none'], floors: { mud: 'mostly' } });
    expect(floor.cautions.filter(({ level }) => level === 'mind').every(({ health }) => !health)).toBe(true);
    expect(holdOfList(floor)).toBe('mind');
    expect(holdText(floor, words)).toBe(REASSURES);
  });
});
