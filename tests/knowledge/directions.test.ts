import { describe, expect, it } from 'vitest';
import { effectiveWeight } from '../../src/profile/contributions.ts';
import { factsOf } from '../../src/profile/facts.ts';
import { MAIN } from '../profile/main-knowledge.ts';
import { visitOf } from '../profile/toy-visit.ts';
import { directionsOf } from './directions.ts';
import { answering, lookInto } from './look-into.ts';
import { holdsToPoint, POINTS } from './points.ts';

const DIRECTIONS = directionsOf(MAIN);
const { ruleOf, askOf } = lookInto(MAIN);

describe('a rule that rests on a source points the way the source found', () => {
  it.each(Object.entries(DIRECTIONS))('%s', (_, [, check]) => check());

  it.each(Object.entries(POINTS))('%s asks, tells and weighs what its source allows and nothing else', (id, point) => {
    holdsToPoint(MAIN, id, point);
  });

  it('for every rule that cites a source', () => {
    const citing = MAIN.rules.filter(({ source }) => source !== 'common-practice').map(({ id }) => id);
    expect(Object.keys(POINTS).sort()).toEqual(citing.sort());
  });

  it('for every source that a rule cites', () => {
    const cited = new Set(MAIN.rules.map(({ source }) => source).filter((source) => source !== 'common-practice'));
    expect(Object.keys(DIRECTIONS).sort()).toEqual([...cited].sort());
  });

  it('and weighs no more than its grade allows, with every load at its highest', () => {
    const caps = { strong: 1, moderate: 0.8, 'common-practice': 0.7, weak: 0.35, contested: 0.3 };
    for (const rule of MAIN.rules.filter(({ basis }) => basis !== 'liking')) {
      for (const ask of rule.asks ?? []) {
        const facts = ask.per === undefined ? {} : { [ask.per]: 1 };
        expect(effectiveWeight(rule, ask, facts), rule.id).toBeLessThanOrEqual(caps[rule.grade]);
      }
    }
  });

  it('and a rule on one load falls to nothing with the load', () => {
    const facts = factsOf(visitOf(answering('indoor-cycling')), MAIN);
    expect(facts['load-bounce']).toBe(0);
    expect(effectiveWeight(ruleOf('bounce-drop'), askOf('bounce-drop', 'drop'), facts)).toBe(0);
  });
});
