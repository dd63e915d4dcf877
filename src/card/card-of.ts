import { type Answer, SHARES } from '../flow/answers.ts';
import type { Activity, Knowledge } from '../flow/knowledge.ts';
import type { Line } from '../pipeline.ts';
import { factsOf } from '../profile/facts.ts';
import type { Facts, Profile } from '../profile/profile.ts';
import { profileOf } from '../profile/profile-of.ts';
import { followUpWeeks } from '../shortlist/follow-up.ts';
import type { LabelSystem, Stock } from '../stock/shoe.ts';
import { effectiveAnswers } from '../visit/effective.ts';
import type { Visit } from '../visit/visit.ts';
import { benchOf } from './bench.ts';
import { type Calculated, calculatedSizes, labelsDiffer } from './calculated-size.ts';
import type { CardFacts, CardLineUp, CardSize, Copy } from './card.ts';
import { cardCautions } from './cautions.ts';
import { labelSystem } from './label-system.ts';
import { pairsOf } from './pairs.ts';
import { healthSources, onlyHealth, openVisit } from './private.ts';
import type { Shop } from './shop.ts';
import { stripsOf, todayMeasured } from './strips.ts';
import { withKit } from './task-kit.ts';
import { type TaskGate, tasksOf } from './tasks.ts';

/** What a card needs besides the line itself. */
export interface CardContext {
  readonly shop: Shop;
  /** ISO date of the visit. */
  readonly date: string;
  readonly ticket: string;
  readonly stock: Stock;
  readonly knowledge: Knowledge;
  /** The card code of the visit, as `writeCardCode` gives it: with the kiosk's address in front it is a link. */
  readonly code: string;
  readonly copy: Copy;
  readonly gate: TaskGate;
  /** Shoe ids in the order of their letters, where letters were given before. */
  readonly letters?: readonly string[];
}

/**
 * What one visit's card says.
 *
 * The fitter's copy says everything. The customer's says what followed from health answers only if they asked for it
 * to be printed; otherwise its tape measures, size, tasks, advice and cautions are those of the same visit with every
 * health question answered "none of these".
 */
export function cardOf(line: Line, context: CardContext): CardFacts {
  const { visit, profile, shortlist } = line;
  const { knowledge, copy } = context;
  const fitter = copy === 'fitter';
  const tellsHealth = fitter || visit.printHealth === true;
  const health = healthSources(knowledge.flow, visit);
  const shown = tellsHealth ? profile : openProfile(visit, knowledge);
  const hiddenMusts = new Set(
    profile.musts.filter((must) => !tellsHealth && onlyHealth(must.reasons, health)).map((must) => must.attribute),
  );
  const privacy = { health, tellsHealth, hiddenMusts, withFrom: fitter };
  const first = labelSystem(visit);
  const calculated = calculatedOf(shown, first);
  const { choice } = visit;
  const isDecided =
    choice?.kind === 'pair' &&
    shortlist.lineUps.some(({ entries }) => entries.some(({ shoe }) => shoe.id === choice.shoe));
  const pairs = pairsOf(shortlist.lineUps, first, privacy, context.letters, calculated[0], isDecided);
  const activity = knowledge.activities.find((row) => row.id === profile.facts['activity']);
  // What also follows from an open answer stays said, whatever a health answer adds to its reasons.
  const own = tellsHealth ? profile.cautions : [...profile.cautions, ...shown.cautions];
  const cautions = cardCautions(profile.outcome, own, knowledge, health, tellsHealth, fitter);
  const fittersAdvice = new Set(knowledge.advice.filter((row) => row.fitterOnly).map((row) => row.id));
  const beforeChoosing = new Set(knowledge.advice.filter((row) => row.untilChosen).map((row) => row.id));
  const asked = healthAsked(profile.facts);
  const decided = decisionOf(visit, pairs.lineUps);
  const drawn = profile.outcome === 'shortlist' ? shown.needs : [];
  return {
    copy,
    outcome: profile.outcome,
    ...(profile.otherFootwear ? { otherFootwear: profile.otherFootwear } : {}),
    shop: context.shop,
    date: context.date,
    ticket: context.ticket,
    stockAsOf: context.stock.asOf,
    code: context.code,
    ...(profile.outcome === 'refer'
      ? {}
      : doingOf(activity, profile.facts, effectiveAnswers(visit, knowledge.flow)['floors'])),
    lineUps: pairs.lineUps,
    musts: profile.outcome === 'shortlist' ? mustsMet(profile.musts, hiddenMusts) : [],
    justSize: profile.facts['reason'] === 'just-my-size',
    todayMeasured: todayMeasured(visit),
    strips: stripsOf(drawn, pairs.shoes, shown.facts, fitter),
    tasks:
      profile.outcome === 'shortlist' && !decided
        ? tasksOf(withKit(activity?.tasks ?? [], context.shop.kit), profile.facts, context.gate, { asked, tellsHealth })
        : { gentle: [], moving: [], needsFitter: false },
    ...(profile.outcome === 'refer' ? {} : { size: sizeOf(visit, shown, calculated, pairs.lineUps) }),
    cautions,
    advice: (profile.outcome === 'refer' ? [] : shown.advice)
      .filter((item) => tellsHealth || !(item.health || onlyHealth(item.reasons, health)))
      .filter((item) => fitter || !fittersAdvice.has(item.code))
      .filter((item) => !decided || !beforeChoosing.has(item.code))
      .map(({ code, kind }) => ({ code, kind })),
    healthAsked: asked,
    healthNotes: tellsHealth,
    ...decided,
    ...(fitter
      ? { bench: benchOf(line, knowledge, cautions, { stock: context.stock, first }, decided !== undefined) }
      : {}),
  };
}

/** A customer need not be told of their own shelf. */
const mustsMet = (musts: Profile['musts'], hidden: ReadonlySet<string>): CardFacts['musts'] =>
  musts
    .filter(({ attribute }) => attribute !== 'shelf' && !hidden.has(attribute))
    .map(({ attribute, value }) => ({ must: attribute, value }));

/** Activity and the floor met most, as drawn at the head of the card; of several alike the first of the table. */
function doingOf(activity: Activity | undefined, facts: Facts, shares: Answer | undefined): Pick<CardFacts, 'doing'> {
  if (!activity) return {};
  const floors = Array.isArray(facts['floors']) ? facts['floors'] : [];
  const met = new Map<string, unknown>(Object.entries(shares ?? {}));
  const [floor] = SHARES.flatMap((share) => floors.filter((each) => met.get(each) === share));
  return { doing: { activity: activity.id, group: activity.group, ...(floor ? { floor } : {}) } };
}

/** Only a pair that is still on the card is anybody's, and has somebody to come back with it. */
function decisionOf(
  { choice }: Visit,
  lineUps: readonly CardLineUp[],
): Required<Pick<CardFacts, 'chosen' | 'followUp'>> | undefined {
  if (choice?.kind !== 'pair') return undefined;
  const pairs = lineUps.flatMap((lineUp) => lineUp.pairs);
  const pair = pairs.find(({ shoe }) => shoe === choice.shoe);
  const second = pairs.find(({ shoe }) => shoe === choice.second)?.shoe;
  return (
    pair && {
      chosen: { shoe: pair.shoe, ...(second === undefined ? {} : { second }) },
      followUp: followUpWeeks(pair.easeIn),
    }
  );
}

function openProfile(visit: Visit, knowledge: Knowledge): Profile {
  const open = openVisit(visit, knowledge.flow);
  return profileOf(factsOf(open, knowledge), open, knowledge);
}

/** Skipping is no health answer: the card says it openly. A visit from another device carries it in its hold. */
function healthAsked(facts: Facts): boolean {
  const carried = facts['hold-carried'];
  // Nobody here can tell whether a pair to be measured first came with health answers or without.
  return carried === undefined
    ? facts['health-asked'] === 'asked'
    : carried !== 'skipped' && carried !== 'measure-first';
}

const calculatedOf = ({ size, facts }: Profile, first: LabelSystem): readonly Calculated[] =>
  size.labels ? calculatedSizes(first, size.labels, facts['shelf']) : [];

function sizeOf(
  visit: Visit,
  { size }: Profile,
  calculated: readonly Calculated[],
  lineUps: readonly CardLineUp[],
): CardSize {
  const feet = visit.observation.feet;
  const [own] = calculated;
  return {
    ...size,
    calculated,
    labelsDiffer: own !== undefined && labelsDiffer(lineUps, own),
    ...(feet?.left ? { left: feet.left } : {}),
    ...(feet?.right ? { right: feet.right } : {}),
  };
}
