import type { Answers } from '../flow/answers.ts';
import { isQuantity } from '../flow/holds.ts';
import type { Observation } from '../observation/observation.ts';
import type { SizeAdvice } from '../sizing/advice.ts';
import { sizeAdvice } from '../sizing/size-advice.ts';
import type { Shelf } from '../stock/shoe.ts';

const SHELVES: readonly Shelf[] = ['men', 'women', 'junior', 'any'];

/** What size to fetch, from the answers that count, what was measured, and the toe room that the activities want. */
export function sizeOfVisit(
  answers: Answers,
  observation: Observation,
  activityRoom: readonly [number, number] | undefined,
): SizeAdvice {
  const { feet, oldPair } = observation;
  const size = answers['now-size'];
  const inside = answers['inside'];
  return sizeAdvice({
    feet,
    oldPair,
    nowSize: typeof size === 'string' || (size !== undefined && isQuantity(size)) ? size : undefined,
    nowFeel: feelOf(answers),
    activityRoom,
    ageBand: word(answers['age-band']),
    shelf: SHELVES.find((shelf) => shelf === answers['shelf']),
    inside: Array.isArray(inside) ? inside : [],
  });
}

/**
 * How the pair of today feels in length. Who says that it was outgrown, or that the toes touch its end, has a pair that is
 * too short by half a size at least, even where they call it right, as children do, or were not sure. Common practice.
 */
function feelOf(answers: Answers): string | undefined {
  const feel = word(answers['now-feel']);
  const troubles = answers['now-troubles'];
  const short = answers['reason'] === 'outgrown' || (Array.isArray(troubles) && troubles.includes('too-short'));
  return short && (feel === undefined || feel === 'right' || feel === 'not-sure') ? 'a-bit-short' : feel;
}

const word = (answer: Answers[string] | undefined): string | undefined =>
  typeof answer === 'string' ? answer : undefined;
