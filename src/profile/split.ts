import type { Answer, Answers } from '../flow/answers.ts';
import type { Knowledge } from '../flow/knowledge.ts';
import { inPlay } from '../flow/route.ts';
import type { Visit } from '../visit/visit.ts';
import { activityParts, SOMETHING_ELSE } from './activity-parts.ts';
import { type Asked, askedBy } from './asked-by.ts';
import { factsOfTold, originsOf, toldOfAnswers } from './facts.ts';
import { healthQuestions } from './from.ts';
import type { ProfilePart } from './profile.ts';
import { pullBetween } from './pull-between.ts';

/**
 * Beyond this pull, two activities want two pairs. A design choice: over the activities of the main flow it parts running
 * from lifting and trail from gym, and keeps road with treadmill, tennis with padel, walking with hill walking together.
 */
export const TOO_FAR_APART = 0.04;

/**
 * What it adds to the pull that no kind of shoe is sold for both: nobody sells a running shoe for court games, or the
 * other way round, even where a figure lies within both ranges. Common practice; the figure is chosen so that running
 * and most court games want two pairs. It is not enough alone, so that needs which nowhere part are still one pair.
 */
export const NOT_SOLD_FOR_BOTH = 0.03;

/**
 * Two pairs instead of one: for two activities whose needs, each taken alone, pull too far apart; else for a hall that
 * allows indoor-only pairs when the same pair is worn to and from it. An activity done now and then needs no own pair.
 */
export function splitOf(answers: Answers, visit: Visit, knowledge: Knowledge): readonly ProfilePart[] | undefined {
  return byActivities(answers, visit, knowledge) ?? byDoor(answers, visit, knowledge);
}

function byActivities(answers: Answers, visit: Visit, knowledge: Knowledge): readonly ProfilePart[] | undefined {
  const main = answers['activity'];
  const second = answers['second-activity'];
  const rows = new Set<unknown>([...knowledge.activities.map((row) => row.id), SOMETHING_ELSE]);
  if (!rows.has(main) || !rows.has(second) || main === second || answers['second-share'] === 'now-and-then')
    return undefined;
  const alone = (activity: Answer | undefined, from: string, of = answers): ProfilePart => {
    const { 'second-activity': _second, 'second-share': _share, ...rest } = of;
    const own = floorsOf(activity, knowledge);
    const others = floorsOf(activity === main ? second : main, knowledge);
    const single = { ...rest, activity: activity ?? SOMETHING_ELSE };
    const on = onFloors(
      single,
      (floor) => own.includes(floor),
      (floor) => !others.includes(floor),
    );
    const bound = hasHallRules(single, floorIds(on['floors']), knowledge);
    return partOf(String(activity), asksOf(bound ? on : withoutHallRules(on), from, visit, knowledge));
  };
  // The activities part the pairs, not the body: a second line-up on a card must not tell of a health answer.
  const open = withoutHealth(answers, knowledge);
  const pull = pullBetween(alone(main, 'activity', open).needs, alone(second, 'second-activity', open).needs);
  const apart = soldForBoth(main, second, knowledge) ? pull : pull + NOT_SOLD_FOR_BOTH;
  return apart > TOO_FAR_APART ? [alone(main, 'activity'), alone(second, 'second-activity')] : undefined;
}

function byDoor(answers: Answers, visit: Visit, knowledge: Knowledge): readonly ProfilePart[] | undefined {
  const rules = answers['place-rules'];
  if (!Array.isArray(rules) || !rules.includes('indoor-only') || answers['worn-to-and-from'] !== 'yes')
    return undefined;
  const inGroup = (group: 'indoor' | 'outdoor') => (id: string) => isIn(id, group, knowledge);
  const indoor = asksOf(onFloors(answers, inGroup('indoor')), 'activity', visit, knowledge);
  // Outside, the hall's rules do not count.
  const { 'place-rules': _rules, ...unruled } = answers;
  const outdoor = asksOf(onFloors(unruled, inGroup('outdoor')), 'activity', visit, knowledge);
  return [partOf('indoor', indoor), partOf('outdoor', outdoor)];
}

function withoutHealth(answers: Answers, { flow }: Knowledge): Answers {
  const health = healthQuestions(flow);
  return Object.fromEntries(Object.entries(answers).filter(([id]) => !health.has(id)));
}

const partOf = (what: string, { needs, musts, preferences }: Asked): ProfilePart => ({
  for: what,
  needs,
  musts,
  preferences,
});

/** Where nothing in particular is sold for one of them, nothing is known to keep them apart. */
function soldForBoth(main: Answer | undefined, second: Answer | undefined, { activities }: Knowledge): boolean {
  const usesOf = (id: Answer | undefined) => activities.find((row) => row.id === id)?.uses ?? [];
  const [one, other] = [usesOf(main), usesOf(second)];
  return one.length === 0 || other.length === 0 || one.some((use) => other.includes(use));
}

const floorsOf = (activity: Answer | undefined, knowledge: Knowledge): readonly string[] =>
  knowledge.activities.find((row) => row.id === activity)?.floors ?? [];

const isIn = (id: string, group: 'indoor' | 'outdoor', knowledge: Knowledge): boolean =>
  knowledge.floors.some((floor) => floor.id === id && floor.group === group);

/**
 * Whether a hall's or a workplace's rules count for one activity on these floors: not where none is indoors, and where
 * somebody who does nothing else would not be asked about rules, only if all are (concrete is out of doors as well).
 */
function hasHallRules(single: Answers, floors: readonly string[], knowledge: Knowledge): boolean {
  const asked = inPlay(knowledge.flow, { ...single, 'second-activity': 'none' }).includes('place-rules');
  const indoor = floors.filter((floor) => isIn(floor, 'indoor', knowledge)).length;
  return floors.length === 0 ? asked : indoor > 0 && (asked || indoor === floors.length);
}

/** Rules of a race count wherever it is run; all others are a hall's or a workplace's, and stay inside with it. */
const RACE_RULES: readonly string[] = ['stack-20', 'stack-40'];

/** On no floor indoors, no rule of a hall counts. */
function withoutHallRules(answers: Answers): Answers {
  const { 'place-rules': rules, ...rest } = answers;
  const kept = Array.isArray(rules) ? rules.filter((rule) => RACE_RULES.includes(rule)) : [];
  return kept.length > 0 ? { ...rest, 'place-rules': kept } : rest;
}

/** What other answers would ask for; what would be traced to the activity is traced to the answer it really came from. */
function asksOf(answers: Answers, from: string, visit: Visit, knowledge: Knowledge): Asked {
  const told = toldOfAnswers(answers, visit, knowledge).map((each) =>
    each.from === 'activity' ? { ...each, from } : each,
  );
  const activities = activityParts(answers, knowledge).map((part) =>
    part.question === 'activity' ? { ...part, question: from } : part,
  );
  return askedBy(factsOfTold(told), originsOf(told), knowledge, activities);
}

/**
 * The floors that belong here. Where none does, those that may be meant for here as well: all of them, unless told
 * otherwise; and where none may be, none was said.
 */
function onFloors(
  answers: Answers,
  belongs: (floor: string) => boolean,
  mayBeMeant?: (floor: string) => boolean,
): Answers {
  const { floors: shares, ...others } = answers;
  const own = floorIds(shares).filter(belongs);
  if (own.length === 0 && mayBeMeant === undefined) return answers;
  const kept = own.length > 0 ? own : floorIds(shares).filter((floor) => mayBeMeant?.(floor));
  if (kept.length === 0 || typeof shares !== 'object') return others;
  const floors = Object.fromEntries(Object.entries(shares).filter(([floor]) => kept.includes(floor))) as Record<
    string,
    string
  >;
  return { ...answers, floors };
}

const floorIds = (shares: Answer | undefined): readonly string[] =>
  typeof shares === 'object' && !Array.isArray(shares) ? Object.keys(shares) : [];
