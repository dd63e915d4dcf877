import type { Foot, Observation } from '../observation/observation.ts';
import { roundFact, type Told } from './told.ts';

const from = 'observation';

/** What the fitter measured and saw: the longer foot, the old pair's wear, the roll. */
export function factsOfObservation(observation: Observation): readonly Told[] {
  return [...footFacts(observation), ...oldPairFacts(observation), ...rollFacts(observation)];
}

function footFacts({ feet }: Observation): readonly Told[] {
  const left = length(feet?.left);
  const right = length(feet?.right);
  const known = [left, right].filter((each) => each !== undefined);
  if (known.length === 0) return [];
  const difference = left !== undefined && right !== undefined ? Math.abs(left - right) : undefined;
  return [
    { key: 'foot-length', value: roundFact(Math.max(...known)), from },
    ...(difference === undefined ? [] : [{ key: 'foot-difference', value: roundFact(difference), from }]),
  ];
}

const length = (foot: Foot | undefined): number | undefined =>
  foot?.length !== undefined && Number.isFinite(foot.length) ? foot.length : undefined;

/** `insoleLength` becomes `old-pair-insole-length`; the measured figures are among the facts of today's shoe. */
function oldPairFacts({ oldPair }: Observation): readonly Told[] {
  return Object.entries(oldPair ?? {}).flatMap(([field, value]): Told[] => {
    const key = `old-pair-${field.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`;
    if (typeof value === 'number') return [{ key, value: roundFact(value), from }];
    return typeof value === 'string' ? [{ key, value, from }] : [];
  });
}

/** Either foot counts. What "couldn't tell" leaves is that somebody looked. */
function rollFacts({ roll }: Observation): readonly Told[] {
  if (!roll) return [];
  const seen = [roll.left, roll.right];
  return [
    { key: 'roll-in', value: seen.includes('in'), from },
    { key: 'roll-out', value: seen.includes('out'), from },
    { key: 'roll-seen', value: seen.some((each) => each !== 'not-told'), from },
  ];
}
