import type { Answers } from '../../src/flow/answers.ts';
import type { Ask, Knowledge, Rule } from '../../src/flow/knowledge.ts';
import { profileFor, visitOf } from '../profile/toy-visit.ts';

/** Somebody of whom nothing special is known, who does this. */
export const answering = (activity: string, more: Answers = {}): Answers => ({
  reason: 'worn-out',
  activity,
  'second-activity': 'none',
  signs: ['none'],
  conditions: ['none'],
  ...more,
});

/** Questions to ask of one body of knowledge. */
export function lookInto(knowledge: Knowledge) {
  /** A rule by its id; a test that names a rule that is gone fails here. */
  const ruleOf = (id: string): Rule => {
    const rule = knowledge.rules.find((each) => each.id === id);
    if (!rule) throw new Error(`No rule ${id}`);
    return rule;
  };
  /** What a rule asks of one property. */
  const askOf = (id: string, attribute: Ask['attribute']): Ask => {
    const ask = ruleOf(id).asks?.find((each) => each.attribute === attribute);
    if (!ask) throw new Error(`Rule ${id} asks nothing of ${attribute}`);
    return ask;
  };
  /** What somebody with these answers is told and asked for. */
  const saying = (answers: Answers, roll?: 'in' | 'out') =>
    profileFor(
      visitOf(
        answers,
        roll ? { observation: { roll: { left: roll, right: roll, by: 'Fitter', during: 'own-movement' } } } : {},
      ),
      knowledge,
    );
  const needsOf = (answers: Answers, roll?: 'in' | 'out') => saying(answers, roll).needs;
  return {
    ruleOf,
    askOf,
    /** The two ends of what a rule asks for. */
    idealOf: (id: string, attribute: Ask['attribute']): readonly [number, number] => {
      const { ideal } = askOf(id, attribute);
      if (!ideal) throw new Error(`Rule ${id} gives no range for ${attribute}`);
      return ideal;
    },
    /** Whether a rule asks nothing of any property and shuts nothing out: it only says something. */
    onlySays: (id: string): boolean => {
      const { asks, musts, outcome } = ruleOf(id);
      return !asks && !musts && !outcome;
    },
    /** The urgencies of the cautions that a rule names. */
    levelsOf: (id: string): readonly string[] =>
      (ruleOf(id).cautions ?? []).map((code) => knowledge.cautions.find((row) => row.id === code)?.level ?? 'unknown'),
    saying,
    needsOf,
    middleOf: (answers: Answers, key: string): number => {
      const ideal = needsOf(answers).find((need) => need.attribute === key)?.ideal;
      if (!ideal) throw new Error(`Nothing is asked of ${key}`);
      return (ideal[0] + ideal[1]) / 2;
    },
  };
}
