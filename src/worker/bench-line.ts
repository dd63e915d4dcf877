import { type Calculated, calculatedSizes, noneBears } from '../card/calculated-size.ts';
import { labelSystem } from '../card/label-system.ts';
import type { Knowledge } from '../flow/knowledge.ts';
import { type Line, lineOf } from '../pipeline.ts';
import { type Why, whyOf } from '../profile/why.ts';
import { boxesInSize } from '../shortlist/boxes-in-size.ts';
import { partsOf } from '../shortlist/parts-of.ts';
import { type PulledIn, pullIn } from '../shortlist/pull-in.ts';
import type { Entry, LineUp } from '../shortlist/shortlist.ts';
import type { SizeAdvice } from '../sizing/advice.ts';
import { fitBox } from '../sizing/box-fit.ts';
import { boxesByShoe } from '../stock/index-boxes.ts';
import type { Box, Shoe, Stock } from '../stock/shoe.ts';
import type { Visit } from '../visit/visit.ts';

/** What the bench asks of the line: a visit, the pairs the fitter set aside, and those pulled in by hand. */
export interface BenchOrder {
  readonly visit: Visit;
  /** Shoe ids. */
  readonly aside: readonly string[];
  readonly pulledIn: readonly string[];
  /** Shoe ids in the order in which they were first shown on this ticket. */
  readonly letters?: readonly string[];
}

/** The line with the reasons behind it. */
export interface BenchLine {
  readonly line: Line;
  readonly why: readonly Why[];
  /** Pairs pulled in, judged for the first line-up; shoes no longer in the catalogue are left out. */
  readonly pulledIn: readonly PulledIn[];
  /** Names of the pairs set aside, by id. */
  readonly asideNames: Readonly<Record<string, string>>;
  /** The calculated size, and the shown shoes (ids) of which no box that may be fetched bears it. */
  readonly notHere?: { readonly size: Calculated; readonly shoes: readonly string[] };
  readonly stockAsOf: string;
  /** Every shoe ever shown on this ticket, in the order of its letter: a letter once given stays with its pair. */
  readonly letters: readonly string[];
}

/** A model found by its name, with the box to fetch of it; none where no box in the size is on hand. */
export type FoundShoe = Pick<Shoe, 'id' | 'name' | 'shelf' | 'use'> & { readonly box?: Box };

/** The line for the bench. What was set aside is out of the running, so that the next best moves up. */
export function benchLine(order: BenchOrder, knowledge: Knowledge, stock: Stock, seed: number): BenchLine {
  const { visit, aside, pulledIn } = order;
  const left = aside.length > 0 ? { ...stock, shoes: stock.shoes.filter(({ id }) => !aside.includes(id)) } : stock;
  const line = lineOf(visit, knowledge, left, seed);
  const shown = line.shortlist.lineUps[0]?.entries ?? [];
  const wanted = pulledIn
    .filter((id) => !shown.some(({ shoe }) => shoe.id === id))
    .flatMap((id) => stock.shoes.find((shoe) => shoe.id === id) ?? []);
  const first = partsOf(line.profile)[0]?.for ?? 'all';
  const now = [
    ...line.shortlist.lineUps.flatMap(({ entries }) => entries.map(({ shoe }) => shoe.id)),
    ...wanted.map(({ id }) => id),
  ];
  const { size, facts } = line.profile;
  const [own] = size.labels ? calculatedSizes(labelSystem(visit), size.labels, facts['shelf']) : [];
  return {
    line,
    ...(own && { notHere: { size: own, shoes: shoesWithout(own, now, stock) } }),
    why: whyOf(line.profile, knowledge),
    pulledIn: wanted.map((shoe, at) => pullIn(shoe, shown.length + at + 1, line.profile, knowledge, stock, first)),
    asideNames: Object.fromEntries(
      stock.shoes.filter(({ id }) => aside.includes(id)).map(({ id, name }) => [id, name]),
    ),
    stockAsOf: stock.asOf,
    letters: [...new Set([...(order.letters ?? []), ...now])],
  };
}

function shoesWithout(size: Calculated, shown: readonly string[], { boxes }: Stock): readonly string[] {
  const free = boxesByShoe({ boxes: boxes.filter((box) => shown.includes(box.shoe) && box.onHand > box.reserved) });
  return shown.filter((id) => noneBears(free.get(id) ?? [], size));
}

/** Models whose name holds what was typed, whatever its case; those that begin with it first. At most a dozen. */
export function shoesNamed(typed: string, size: SizeAdvice, stock: Stock): readonly FoundShoe[] {
  const wanted = typed.trim().toLocaleLowerCase();
  if (wanted === '') return [];
  const at = (name: string): number => name.toLocaleLowerCase().indexOf(wanted);
  const shoes = stock.shoes
    .filter(({ name }) => at(name) >= 0)
    .sort((a, b) => Number(at(a.name) > 0) - Number(at(b.name) > 0) || a.name.localeCompare(b.name))
    .slice(0, MOST_FOUND);
  const inSize = boxesInSize({ ...stock, shoes }, size);
  return shoes.map(({ id, name, shelf, use }) => {
    const [fit] = inSize.get(id) ?? [];
    return { id, name, shelf, use, ...(fit && { box: fit.box }) };
  });
}
const MOST_FOUND = 12;

/**
 * The line of a decided visit: the chosen pair alone, and the second choice after it, so that the final card tells of
 * the pairs that count and of nothing else. A visit without a chosen pair keeps its line.
 */
export function decidedLine(line: Line, knowledge: Knowledge, stock: Stock): Line {
  const { choice } = line.visit;
  if (choice?.kind !== 'pair') return line;
  const lineUps = line.shortlist.lineUps;
  const home = lineUps.find(({ entries }) => entries.some(({ shoe }) => shoe.id === choice.shoe)) ?? lineUps[0];
  if (home === undefined) return line;
  const entries = [choice.shoe, ...(choice.second === undefined ? [] : [choice.second])].flatMap((id, at): Entry[] => {
    const entry = entryFor(id, home, line, knowledge, stock);
    if (entry === undefined) return [];
    // The very box they take, which may be sold by now or not be the one the line would fetch.
    const taken = stock.boxes.filter((box) => box.id === choice.box && box.shoe === id);
    const own = taken.map((box) => fitBox(box, entry.shoe, line.profile.size));
    return [{ ...entry, place: at + 1, boxes: id === choice.shoe ? own : entry.boxes }];
  });
  const { whatIf: _whatIf, moreWithout: _moreWithout, ...rest } = home;
  const decided: LineUp = { ...rest, entries, more: [], sureness: 'none' };
  return { ...line, shortlist: { ...line.shortlist, lineUps: [decided] } };
}

function entryFor(id: string, home: LineUp, line: Line, knowledge: Knowledge, stock: Stock): Entry | undefined {
  const all = line.shortlist.lineUps.flatMap(({ entries, more }) => [...entries, ...more]);
  const known = all.find(({ shoe }) => shoe.id === id);
  if (known) return known;
  const shoe = stock.shoes.find((each) => each.id === id);
  return shoe && pullIn(shoe, 1, line.profile, knowledge, stock, home.for).entry;
}
