import type { Knowledge } from '../flow/knowledge.ts';
import type { ActivityPart } from './activity-parts.ts';
import { contributionsOf } from './contributions.ts';
import type { Origins } from './facts.ts';
import { type Fired, firedRules } from './fire.ts';
import { mustsOf } from './musts.ts';
import { needsOf, type Weighed, weigh } from './needs.ts';
import { preferencesOf } from './preferences.ts';
import type { Facts, Must, Need, Preference } from './profile.ts';

/** What some facts ask for, by the rules that fire on them. */
export interface Asked {
  readonly fired: readonly Fired[];
  readonly weighed: readonly Weighed[];
  readonly needs: readonly Need[];
  readonly musts: readonly Must[];
  readonly preferences: readonly Preference[];
}

export function askedBy(
  facts: Facts,
  origins: Origins,
  knowledge: Pick<Knowledge, 'rules' | 'cautions'>,
  activities: readonly ActivityPart[] = [],
): Asked {
  const fired = firedRules(knowledge, facts, origins);
  const weighed = weigh(contributionsOf(fired, facts), facts);
  const preferences = preferencesOf(fired, facts, activities);
  return { fired, weighed, needs: needsOf(weighed, facts), musts: mustsOf(fired), preferences };
}
