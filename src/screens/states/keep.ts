import type { Answers } from '../../flow/answers.ts';
import type { Flow } from '../../flow/format.ts';
import type { Gaps } from '../../gaps/gaps.ts';
import type { Observation } from '../../observation/observation.ts';
import type { PinRecord } from '../../storage/pin.ts';
import type { Store } from '../../storage/store.ts';
import { putTicket, type Ticket } from '../../storage/tickets.ts';
import { freshVisit } from '../../visit/fresh-visit.ts';
import type { Clearance, Visit } from '../../visit/visit.ts';
import { withoutHealth } from '../../visit/without-health.ts';
import { derivePin } from '../fitter/derive-pin.ts';
import { GAPS_TALLY } from '../fitter/tally.ts';
import { STATES_PIN } from './bench-states.ts';
import type { Kept, KeptTicket } from './screen-state.ts';

export interface Story {
  readonly answers: Answers;
  readonly observation?: Observation;
  readonly clearance?: Clearance;
}

/** Wrong tries after which the next must wait. */
const TOO_MANY = 4;

/** Lays down what a state's tablet holds already. */
export async function keep(
  store: Store,
  { pin, tickets = [], lacks }: Kept,
  flow: Flow,
  story: (name: string) => Promise<Story>,
): Promise<void> {
  if (pin) await store.put('shop', 'pin', await pinRecord(pin === 'slowed' ? TOO_MANY : 0));
  for (const each of tickets) await putTicket(store, ticketOf(each, await story(each.story), flow));
  if (lacks) await store.put('tallies', GAPS_TALLY, LACKED);
}

/** One round of derivation: nobody's secret, and quick. */
async function pinRecord(wrong: number): Promise<PinRecord> {
  const salt = 'demo';
  return { salt, derived: await derivePin(STATES_PIN, salt, 1), iterations: 1, wrong, lastWrong: Date.now() };
}

function ticketOf({ word, number, waited, hold, overrides }: KeptTicket, story: Story, flow: Flow): Ticket {
  const { answers, observation, clearance } = story;
  const visit: Visit = {
    ...freshVisit(flow, 'en', answers),
    ...(observation && { observation }),
    ...(clearance && { clearance }),
    overrides: overrides ?? [],
  };
  // Never yesterday's, however early in the day somebody looks: those are over.
  const finishedAt = new Date(Math.max(new Date().setHours(0, 0, 0, 0), Date.now() - waited * 60_000)).toISOString();
  return {
    id: `${word} ${number}`,
    word,
    number,
    startedAt: finishedAt,
    finishedAt,
    state: 'waiting',
    handed: hold === undefined,
    visit: hold === undefined ? visit : withoutHealth(visit, hold, flow),
    revision: 0,
  };
}

/** Invented sums. */
const LACKED: Gaps = {
  visits: 23,
  minutes: { sum: 460, visits: 22 },
  counts: [
    { topic: 'need', what: 'drop-less', health: false, count: 9 },
    { topic: 'need', what: 'cushion-more', health: false, count: 4 },
    { topic: 'must', what: 'non-marking', health: false, count: 6 },
    { topic: 'no-sale', what: 'price', health: false, count: 3 },
  ],
};
