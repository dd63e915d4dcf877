import { describe, expect, it } from 'vitest';
import type { Knowledge, Rule } from '../../src/flow/knowledge.ts';
import { MAIN } from '../profile/main-knowledge.ts';
import { breakRule } from './break-rule.ts';
import { directionsOf } from './directions.ts';
import { holdsToPoint, POINTS } from './points.ts';

const published = MAIN.rules.filter(({ source }) => source !== 'common-practice');

/** Whether the direction of a rule's source notices, or what the rule itself is held to. */
function notices({ id, source }: Rule, knowledge: Knowledge): boolean {
  try {
    holdsToPoint(knowledge, id, POINTS[id] ?? { grade: 'contested' });
    directionsOf(knowledge)[source]?.[1]();
    return false;
  } catch {
    return true;
  }
}

describe('a rule broken on purpose is noticed by the direction of its source', () => {
  it.each(published.map((rule) => [rule.id, rule] as const))('%s', (_, rule) => {
    expect(notices(rule, MAIN)).toBe(false);
    const broken = breakRule(MAIN, rule);
    expect(broken.length).toBeGreaterThanOrEqual(2);
    expect(broken.filter(({ knowledge }) => !notices(rule, knowledge)).map(({ how }) => how)).toEqual([]);
  });
});
