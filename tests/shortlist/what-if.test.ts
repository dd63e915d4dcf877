import { describe, expect, test } from 'vitest';
import type { Profile } from '../../src/profile/profile.ts';
import { shortlistOf } from '../../src/shortlist/shortlist-of.ts';
import { MOST_TRIED, whatIf } from '../../src/shortlist/what-if.ts';
import type { Visit } from '../../src/visit/visit.ts';
import { knowledge, must, need, profile, shoe, stockOf, visit } from './toy.ts';

const LIKING = { liking: { cushion: 'softer' } };
const asked: Visit = { ...visit, answers: LIKING };
const liked = (visited: Visit): string => {
  const value = visited.overrides.at(-1)?.value ?? visited.answers['liking'];
  return (value as Record<string, string>)['cushion'] as string;
};
/** Softer, the same or firmer: the toy's whole knowledge of cushion. */
const reprofile = (visited: Visit): Profile => {
  const ideal = { softer: [4, 5], same: [3, 3], firmer: [1, 2] }[liked(visited)] ?? [1, 5];
  return profile([need('cushion', ideal as [number, number], 0.6, 'liking:cushion')]);
};

const soft = shoe('soft', { cushion: 5 });
const firm = shoe('firm', { cushion: 1 });

describe('the one answer whose change would bring another pair first', () => {
  test('is named with what it would be and which pair', () => {
    const { lineUps } = shortlistOf(reprofile(asked), asked, knowledge, stockOf([soft, firm]), 1, reprofile);
    expect(lineUps[0]?.entries[0]?.shoe.id).toBe('soft');
    expect(lineUps[0]?.whatIf).toEqual({ question: 'liking', property: 'cushion', option: 'same', shoe: 'firm' });
  });

  test('is not looked for unless asked, nor named when no change moves the first pair', () => {
    const stock = stockOf([soft]);
    expect(shortlistOf(reprofile(asked), asked, knowledge, stock, 1, reprofile).lineUps[0]).not.toHaveProperty(
      'whatIf',
    );
    const both = stockOf([soft, firm]);
    expect(shortlistOf(reprofile(asked), asked, knowledge, both, 1).lineUps[0]).not.toHaveProperty('whatIf');
  });

  test('a rule of the place may be taken out', () => {
    const ruled: Visit = { ...visit, answers: { 'place-rules': ['non-marking', 'closed-heel'] } };
    const found = whatIf('soft', profile([], [must('non-marking')]), ruled, knowledge, ({ overrides }) =>
      JSON.stringify(overrides.at(-1)?.value).includes('non-marking') ? 'soft' : 'firm',
    );
    expect(found).toEqual({ question: 'place-rules', option: 'non-marking', without: true, shoe: 'firm' });
  });

  test('is never a health answer, who somebody is, or what they do', () => {
    const needs = [need('cushion', [4, 5], 0.6, 'body:heel'), need('drop', [4, 8], 0.5, 'activity')];
    const answered: Visit = { ...visit, answers: { body: {}, activity: 'toy-hopping' } };
    expect(whatIf('soft', profile(needs), answered, knowledge, () => 'firm')).toBeUndefined();

    // Not even when the rule that reads a health answer is about liking.
    const told: Visit = { ...visit, answers: { conditions: ['falls-or-unsteady', 'pregnant'] } };
    const read = [need('cushion', [1, 2], 0.6, 'conditions')];
    const rules = [{ ...knowledge.rules[0], id: 'rule-conditions' } as (typeof knowledge.rules)[number]];
    expect(whatIf('soft', profile(read), told, { ...knowledge, rules }, () => 'firm')).toBeUndefined();
  });

  test('is looked for a bounded number of times', () => {
    const many = Array.from({ length: 60 }, (_, i) => ({ id: `q${i}`, kind: 'yes-no' }) as const);
    const rules = many.map(({ id }) => ({ ...knowledge.rules[0], id: `rule-${id}`, basis: 'liking' }) as never);
    const flow = { ...knowledge.flow, sections: [{ id: 'all', questions: many }] };
    const answers = Object.fromEntries(many.map(({ id }) => [id, 'yes']));
    const needs = many.map(({ id }) => need('drop', [4, 8], 0.5, id));
    let tried = 0;
    whatIf('soft', profile(needs), { ...visit, answers }, { ...knowledge, flow, rules }, () => {
      tried += 1;
      return 'soft';
    });
    expect(tried).toBe(MOST_TRIED);
  });
});
