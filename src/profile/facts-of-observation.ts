import type { Answers } from '../flow/answers.ts';
import type { Observation } from '../observation/observation.ts';
import type { SizeAdvice } from '../sizing/advice.ts';
import { sizeOfVisit } from './size-of-visit.ts';
import { roundFact, type Told } from './told.ts';

const from = 'observation';

/** What the fitter measured and saw: the longer foot, its width, the old pair's wear, the roll. */
export function factsOfObservation(answers: Answers, observation: Observation): readonly Told[] {
  const size = sizeOfVisit(answers, observation, undefined);
  return [...footFacts(size), ...oldPairFacts(observation), ...rollFacts(observation)];
}

/** As sizing reads them, which leaves out a measure that cannot be. */
function footFacts({ from: rests, footLength, difference, width }: SizeAdvice): readonly Told[] {
  if (rests !== 'measured') return [];
  return [
    ...numberFact('foot-length', footLength),
    ...numberFact('foot-difference', difference),
    ...numberFact('width-z', width?.z),
  ];
}

const numberFact = (key: string, value: number | undefined): readonly Told[] =>
  value === undefined ? [] : [{ key, value: roundFact(value), from }];

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
