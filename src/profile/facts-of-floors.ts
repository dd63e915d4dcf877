import type { Answers } from '../flow/answers.ts';
import type { Floor, Knowledge } from '../flow/knowledge.ts';
import { activityParts } from './activity-parts.ts';
import { shareWeight } from './share-weights.ts';
import { roundFact, type Told } from './told.ts';

interface Underfoot {
  readonly floor: Floor;
  readonly weight: number;
  readonly from: string;
}

const WET: ReadonlyMap<unknown, number> = new Map([
  ['dry', 0],
  ['sometimes', 0.5],
  ['often', 1],
]);

/**
 * What is underfoot, blended over the floors by their shares; over the activities' own floors where nobody said.
 *
 * `floor-marks` becomes a must, so an assumed floor counts only if all of the assumed ones are marked by dark rubber.
 */
export function factsOfFloors(answers: Answers, knowledge: Knowledge): readonly Told[] {
  const said = saidFloors(answers, knowledge);
  const floors = said.length > 0 ? said : usualFloors(answers, knowledge);
  const wet = WET.get(answers['wet']);
  return [
    ...blendedFacts(floors, said.length > 0),
    ...(wet === undefined ? [] : [{ key: 'floor-wet', value: wet, from: 'wet' }]),
  ];
}

function blendedFacts(floors: readonly Underfoot[], said: boolean): readonly Told[] {
  const whole = floors.reduce((sum, each) => sum + each.weight, 0);
  const [first] = floors;
  if (!first) return [];
  const { from } = first;
  const blend = (of: (floor: Floor) => number): number =>
    roundFact(floors.reduce((sum, each) => sum + of(each.floor) * each.weight, 0) / whole);
  const marks = (each: Underfoot): boolean => each.floor.marks === true;
  return [
    { key: 'floor-hardness', value: blend((floor) => middle(floor.hardness.range)), from },
    { key: 'floor-grip', value: blend((floor) => middle(floor.grip.range)), from },
    { key: 'floor-roughness', value: blend((floor) => floor.roughness.value), from },
    { key: 'floor-lugs', value: blend((floor) => middle(floor.lugs.range)), from },
    { key: 'floor-marks', value: said ? floors.some(marks) : floors.every(marks), from },
  ];
}

/** In the order of the table, so that the order of taps cannot show in the sums. */
function saidFloors(answers: Answers, knowledge: Knowledge): readonly Underfoot[] {
  const shares = answers['floors'];
  if (typeof shares !== 'object' || Array.isArray(shares)) return [];
  const entries = new Map<string, unknown>(Object.entries(shares));
  return knowledge.floors
    .map((floor) => ({ floor, weight: shareWeight(entries.get(floor.id)), from: 'floors' }))
    .filter(({ weight }) => weight > 0);
}

function usualFloors(answers: Answers, knowledge: Knowledge): readonly Underfoot[] {
  return activityParts(answers, knowledge).flatMap(({ row, share, question }) => {
    const own = knowledge.floors.filter((floor) => row?.floors.includes(floor.id));
    return own.map((floor) => ({ floor, weight: share / own.length, from: question }));
  });
}

const middle = ([low, high]: readonly [number, number]): number => (low + high) / 2;
