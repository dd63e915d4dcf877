import type { Knowledge } from '../flow/knowledge.ts';
import { questionsOf } from '../flow/route.ts';
import type { Profile, ProfilePart } from '../profile/profile.ts';
import type { Setting } from './entry.ts';

/**
 * What a line-up is made for: each part of a split profile, or all of it. The shelf the customer chose is a must like
 * the others.
 */
export function partsOf(profile: Profile): readonly ProfilePart[] {
  const { shelf } = profile.facts;
  const parts = profile.split ?? [
    { for: 'all', needs: profile.needs, musts: profile.musts, preferences: profile.preferences ?? [] },
  ];
  if (typeof shelf !== 'string') return parts;
  return parts.map((part) =>
    part.musts.some(({ attribute }) => attribute === 'shelf')
      ? part
      : {
          ...part,
          musts: [
            ...part.musts,
            {
              attribute: 'shelf',
              value: shelf,
              reasons: [{ from: 'shelf', rule: 'shelf', source: 'common-practice', grade: 'common-practice' }],
            },
          ],
        },
  );
}

/** What the entries of one part are made with. */
export function settingOf(part: ProfilePart, profile: Profile, knowledge: Knowledge): Setting {
  const activity = (id: unknown) => knowledge.activities.find((row) => row.id === id);
  return {
    needs: part.needs,
    preferences: part.preferences ?? [],
    profile,
    health: new Set(questionsOf(knowledge.flow).flatMap(({ id, health }) => (health ? [id] : []))),
    unit: (activity(part.for) ?? activity(profile.facts['activity']))?.unit ?? 'hours',
  };
}
