import type { Knowledge } from '../flow/knowledge.ts';
import { answersInPlay } from '../flow/route.ts';
import type { Visit } from '../visit/visit.ts';
import { activityParts } from './activity-parts.ts';
import { answersThatCount } from './answers-that-count.ts';
import { askedBy } from './asked-by.ts';
import { adviceOf, cautionsOf } from './cautions.ts';
import { conflictsOf } from './conflicts.ts';
import { factsOfTold, originsOf, toldOfAnswers } from './facts.ts';
import { type Fired, firedRules } from './fire.ts';
import { holdOf, stopsOf } from './hold.ts';
import { outcomeOf } from './outcome.ts';
import type { Facts, Profile } from './profile.ts';
import { sizeOfVisit } from './size-of-visit.ts';
import { splitOf } from './split.ts';
import { unknownOf } from './unknown.ts';

/**
 * What a visit adds up to: needs, musts, cautions, outcome, size, and what is not known yet.
 *
 * `facts` are those of `factsOf(visit, knowledge)`.
 */
export function profileOf(facts: Facts, visit: Visit, knowledge: Knowledge): Profile {
  const answers = answersThatCount(visit, knowledge.flow);
  const origins = originsOf(toldOfAnswers(answers, visit, knowledge));
  const { fired, weighed, needs, musts, preferences } = askedBy(
    facts,
    origins,
    knowledge,
    activityParts(answers, knowledge),
  );
  const careful = [...fired, ...stopsBeforeChanges(visit, knowledge, fired)];
  const measureFirst = fired.some(({ rule }) => rule.outcome === 'fitter-first');
  const hold = holdOf(stopsOf(careful, knowledge.cautions), facts, measureFirst);
  const cleared = facts['cleared'] === true;
  const stopping = careful.filter((each) =>
    stopsOf([each], knowledge.cautions).some((stop) => !(cleared && stop === 'before-choosing')),
  );
  const split = splitOf(answers, visit, knowledge);
  return {
    ...outcomeOf(fired, hold, facts, stopping),
    hold,
    needs,
    musts,
    preferences,
    ...(split ? { split } : {}),
    cautions: cautionsOf(careful, cleared, knowledge),
    advice: adviceOf(fired, knowledge),
    conflicts: conflictsOf(weighed),
    size: sizeOfVisit(answers, visit.observation, toeRoomOf(facts)),
    unknown: unknownOf(answers, facts, knowledge),
    facts,
  };
}

/**
 * Rules that stop the line on the customer's own answers, though not with the fitter's changes over them: a change may
 * add a stop and never lift one.
 */
function stopsBeforeChanges(visit: Visit, knowledge: Knowledge, fired: readonly Fired[]): readonly Fired[] {
  if (visit.overrides.length === 0) return [];
  const told = toldOfAnswers(answersInPlay(knowledge.flow, visit.answers), visit, knowledge);
  const standing = new Set(fired.map(({ rule }) => rule.id));
  return firedRules(knowledge, factsOfTold(told), originsOf(told)).filter(
    (each) => !standing.has(each.rule.id) && stopsOf([each], knowledge.cautions).length > 0,
  );
}

function toeRoomOf(facts: Facts): readonly [number, number] | undefined {
  const low = facts['toe-room-low'];
  const high = facts['toe-room-high'];
  return typeof low === 'number' && typeof high === 'number' ? [low, high] : undefined;
}
