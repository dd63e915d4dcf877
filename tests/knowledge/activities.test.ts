import { describe, expect, it } from 'vitest';
import type { Answers } from '../../src/flow/answers.ts';
import type { Need } from '../../src/profile/profile.ts';
import { score } from '../../src/shortlist/scored.ts';
import type { Shoe } from '../../src/stock/shoe.ts';
import { MAIN } from '../profile/main-knowledge.ts';
import { profileOfAnswers } from '../profile/toy-visit.ts';
import { TWELVE } from '../stories/twelve-activities.ts';

const doing = (activity: string, more: Answers = {}) =>
  profileOfAnswers({ reason: 'worn-out', activity, 'second-activity': 'none', signs: ['none'], ...more }, MAIN);
const wanted = (needs: readonly Need[]) =>
  needs.map(({ attribute, ideal, importance }) => ({ attribute, ideal, importance }));
const need = (activity: string, key: string) => {
  const found = doing(activity).needs.find((each) => each.attribute === key);
  if (!found) throw new Error(`${activity} asks nothing of ${key}`);
  return found;
};
/** How well one figure meets what an activity asks of one property, 0 to 1. */
const meets = (activity: string, key: Need['attribute'], value: number) => {
  const shoe: Shoe = { id: 'toy', name: 'Toy', use: [], shelf: 'any', numbers: { [key]: value }, marks: {}, lists: {} };
  return score(shoe, [need(activity, key)]).desirability;
};

describe('with all other answers the same', () => {
  it.each(TWELVE.flatMap((one, i) => TWELVE.slice(i + 1).map((other) => [one, other] as const)))(
    '%s and %s do not need the same',
    (one, other) => expect(wanted(doing(one).needs)).not.toEqual(wanted(doing(other).needs)),
  );
});

/** What the trade holds; no source. */
describe('by common practice, for bouncing and side-to-side work', () => {
  const BOUNCING = ['rope-skipping', 'volleyball', 'netball', 'dance-fitness'];
  const SIDEWAYS = ['netball', 'basketball', 'tennis', 'badminton'];
  const BOTH = [...new Set([...BOUNCING, ...SIDEWAYS])];

  it.each(BOTH)('%s takes 4 to 8 mm of drop as steadier, and 12 counts against', (activity) => {
    expect(meets(activity, 'drop', 6)).toBe(1);
    expect(meets(activity, 'drop', 12)).toBeLessThan(0.5);
  });

  it.each(BOTH)('%s counts a very soft and a tall sole against a pair', (activity) => {
    expect(meets(activity, 'cushion', 5)).toBeLessThan(meets(activity, 'cushion', 3));
    expect(meets(activity, 'heel-stack', 40)).toBeLessThan(meets(activity, 'heel-stack', 24));
  });

  it.each(BOTH)('%s prefers a midfoot that holds to a stretchy one', (activity) => {
    expect(meets(activity, 'midfoot-hold', 5)).toBeGreaterThan(meets(activity, 'midfoot-hold', 2));
  });

  it.each(['rope-skipping', 'volleyball'])('%s prefers a springy sole', (activity) => {
    expect(meets(activity, 'rebound', 5)).toBeGreaterThan(meets(activity, 'rebound', 2));
  });

  it('rope skipping wants a shoe neither very light nor heavy', () => {
    expect(meets('rope-skipping', 'mass', 250)).toBe(1);
    expect(meets('rope-skipping', 'mass', 150)).toBeLessThan(0.5);
    expect(meets('rope-skipping', 'mass', 400)).toBeLessThan(0.5);
  });
});

describe('a load says what a label would not', () => {
  it('a bounce on a pedal is not jumping', () => {
    const rules = doing('indoor-cycling').needs.flatMap(({ reasons }) => reasons.map(({ rule }) => rule));
    expect(rules.filter((rule) => rule.startsWith('bounce'))).toEqual([]);
    expect(rules).toContain('pedals');
  });

  it('lifting wants a firmer sole and a thinner forefoot than running', () => {
    expect(need('lifting', 'cushion').ideal[1]).toBeLessThan(need('road-running', 'cushion').ideal[0]);
    expect(need('lifting', 'forefoot-stack').ideal[1]).toBeLessThan(need('road-running', 'forefoot-stack').ideal[0]);
  });

  it('rough ground wants lugs, a hall floor wants none', () => {
    expect(need('trail-running', 'lug-depth').ideal[0]).toBeGreaterThan(2);
    expect(need('badminton', 'lug-depth').ideal[1]).toBeLessThan(2);
  });

  it('"something else" is described by its loads and asks for as much as a named activity', () => {
    const juggling = { 'else-loads': { jumping: 'mostly', sideways: 'some' } } as const;
    const needs = doing('something-else', juggling).needs.map(({ attribute }) => attribute);
    expect(needs).toEqual(expect.arrayContaining(['drop', 'rebound', 'midfoot-hold', 'cushion']));
  });

  it.each([
    ['football-grass', 'studs'],
    ['road-cycling', 'pedal-cleats'],
    ['ballet-pointe', 'pointe'],
    ['climbing', 'climbing-shoes'],
  ])('%s is told of footwear of its own kind', (activity, kind) => {
    expect(doing(activity)).toMatchObject({ outcome: 'other-footwear', otherFootwear: kind });
  });
});
