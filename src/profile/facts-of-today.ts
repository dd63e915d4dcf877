import type { AttributeKey } from '../attributes/attributes.ts';
import type { Answers } from '../flow/answers.ts';
import type { Knowledge } from '../flow/knowledge.ts';
import type { Observation } from '../observation/observation.ts';
import { roundFact, type Told } from './told.ts';

/** Today's shoe in figures: measured by the fitter, else the middle of what is usual for its kind. */
export function factsOfToday(answers: Answers, observation: Observation, knowledge: Knowledge): readonly Told[] {
  const kind = knowledge.shoeKinds.find((row) => row.id === answers['now-kind']);
  const usual = Object.entries(kind?.usual ?? {}).map(([key, [low, high]]) => [key, (low + high) / 2] as const);
  const measured = measuredFigures(observation);
  const figures = new Map<string, Told>();
  for (const [key, value] of usual) figures.set(key, figure(key, value, 'now-kind'));
  for (const [key, value] of measured) figures.set(key, figure(key, value, 'observation'));
  if (figures.size === 0 && !kind) return [{ key: 'today-known', value: false }];
  const from = measured.length > 0 ? 'observation' : 'now-kind';
  return [{ key: 'today-known', value: true, from }, ...figures.values()];
}

/** A drop that was not measured itself follows from the two stacks that were. */
function measuredFigures({ oldPair }: Observation): readonly (readonly [AttributeKey, number])[] {
  const measured = oldPair?.measured ?? {};
  const heel = measured['heel-stack'];
  const forefoot = measured['forefoot-stack'];
  const drop = measured.drop ?? (heel !== undefined && forefoot !== undefined ? heel - forefoot : undefined);
  const figures: readonly (readonly [AttributeKey, number | undefined])[] = [
    ['mass', measured.mass],
    ['heel-stack', heel],
    ['forefoot-stack', forefoot],
    ['drop', drop],
  ];
  return figures.flatMap(([key, value]) => (value !== undefined && Number.isFinite(value) ? [[key, value]] : []));
}

const figure = (key: string, value: number, from: string): Told => ({
  key: `today-${key}`,
  value: roundFact(value),
  from,
});
