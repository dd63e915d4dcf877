import type { Flow } from '../flow/format.ts';
import { questionsOf } from '../flow/route.ts';
import type { LabelSystem, Stock } from '../stock/shoe.ts';
import { FIT_NOTES, RUB_SPOTS, TASK_FELT } from '../visit/fit-notes.ts';
import type { TryOn, Visit } from '../visit/visit.ts';
import type { BenchChange, BenchDecision, BenchRecord, BenchTried, CardBox } from './card.ts';
import { boxOf } from './pairs.ts';

/** Where names and labels of what was tried and chosen are looked up, and the size system that is said first. */
export interface Shelves {
  readonly stock: Pick<Stock, 'shoes' | 'boxes'>;
  readonly first: LabelSystem;
}

/**
 * What was done at the bench, as it was written down there: feet, answers changed, pairs tried, the decision. Whatever
 * was not recorded is absent. A chosen pair counts only while it is on the card (`pairStands`).
 */
export function benchRecord(visit: Visit, flow: Flow, shelves: Shelves, pairStands: boolean): BenchRecord {
  const decision = decisionOf(visit, shelves, pairStands);
  const { feet } = visit.observation;
  return {
    ...(decision ? { decision } : {}),
    tried: triedOf(visit.tryOns, shelves),
    ...(feet && (feet.left || feet.right) ? { feet } : {}),
    changes: changesOf(visit, flow),
    ...(visit.clearance ? { clearance: visit.clearance } : {}),
  };
}

const nameOf = (shoe: string, { stock }: Shelves): string => stock.shoes.find(({ id }) => id === shoe)?.name ?? shoe;

/** A box that has left the list since is known by its mark alone. */
function boxNamed(box: string, { stock, first }: Shelves): CardBox | string {
  const known = stock.boxes.find(({ id }) => id === box);
  return known ? boxOf(known, first) : box;
}

function decisionOf({ choice }: Visit, shelves: Shelves, pairStands: boolean): BenchDecision | undefined {
  if (choice?.kind !== 'pair') return choice;
  if (!pairStands) return undefined;
  return {
    kind: 'pair',
    name: nameOf(choice.shoe, shelves),
    box: boxNamed(choice.box, shelves),
    ...(choice.second === undefined ? {} : { second: nameOf(choice.second, shelves) }),
  };
}

/** Every box tried, the customer's favourite pair first; boxes of one pair in the order they were tried. */
function triedOf(tryOns: readonly TryOn[], shelves: Shelves): readonly BenchTried[] {
  const place = (shoe: string): number =>
    Math.min(...tryOns.map((each) => (each.shoe === shoe ? (each.rank ?? Number.MAX_SAFE_INTEGER) : Infinity)));
  const shoes = [...new Set(tryOns.map(({ shoe }) => shoe))].sort((one, other) => place(one) - place(other));
  return shoes
    .flatMap((shoe) => tryOns.filter((each) => each.shoe === shoe))
    .map(({ shoe, box, notes, rubs, ...felt }) => ({
      ...felt,
      name: nameOf(shoe, shelves),
      box: boxNamed(box, shelves),
      notes: Object.fromEntries(Object.entries(notes).filter(([key, value]) => isNote(key, value))),
      rubs: rubs.filter((spot) => SPOTS.includes(spot)),
    }));
}

const SPOTS: readonly string[] = ['left', 'right'].flatMap((side) => RUB_SPOTS.map((spot) => `${side}-${spot}`));

/** Notes that the bench has words for: a file from elsewhere may hold others. */
function isNote(key: string, value: string): boolean {
  const choices: Readonly<Record<string, readonly string[]>> = FIT_NOTES;
  const felt: readonly string[] = key.startsWith('task-') ? TASK_FELT : (choices[key] ?? []);
  return felt.includes(value);
}

/** Each question that was changed, once, with the customer's own answer and every change in its turn. */
function changesOf({ answers, overrides, hold }: Visit, flow: Flow): readonly BenchChange[] {
  const changed = new Set(overrides.map(({ question }) => question));
  return questionsOf(flow)
    .filter(({ id }) => changed.has(id))
    .map((question) => {
      const said = answers[question.id];
      return {
        question,
        ...(said === undefined ? {} : { said }),
        keptPrivate: said === undefined && question.health === true && hold !== undefined,
        changes: overrides.filter((each) => each.question === question.id),
      };
    });
}
