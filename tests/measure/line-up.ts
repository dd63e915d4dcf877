import { contentFiles } from '../../src/command-line/files.ts';
import { loadKnowledge, loadStock, loadVisit } from '../../src/command-line/load.ts';
import { SEED } from '../../src/command-line/shortlist.ts';
import { checkFlow } from '../../src/flow/check/check-flow.ts';
import { lineOf } from '../../src/pipeline.ts';
import type { Stock } from '../../src/stock/shoe.ts';
import { quantile } from './watch.ts';

const knowledge = loadKnowledge();
const { stock: demo } = loadStock('demo/stock.csv', '2026-11-25T09:12:00');
const { visit } = loadVisit('flows/fitting/stories/rather-not-say-health.json', knowledge);

/** The demo shop's models over and over under other names, with the boxes that each has. */
function stockOf(count: number): Stock {
  const byShoe = new Map(demo.shoes.map(({ id }) => [id, demo.boxes.filter(({ shoe }) => shoe === id)]));
  const models = Array.from({ length: count }, (_, at) => {
    const shoe = demo.shoes[at % demo.shoes.length] as (typeof demo.shoes)[number];
    return { ...shoe, id: `${shoe.id}-${at}` };
  });
  const boxes = models.flatMap(({ id }, at) =>
    (byShoe.get(demo.shoes[at % demo.shoes.length]?.id ?? '') ?? []).map((box) => ({
      ...box,
      shoe: id,
      id: `${box.id}-${at}`,
    })),
  );
  return { ...demo, shoes: models, boxes };
}

const timed = (work: () => unknown): number => {
  const began = performance.now();
  work();
  return performance.now() - began;
};

export interface LineUpTime {
  readonly shoes: number;
  readonly boxes: number;
  /** Milliseconds, the middle of several. */
  readonly plain: number;
  /** With the one answer that would change the first pair; not looked for in the largest. */
  readonly withWhatIf?: number;
}

/** Answers to line-up, sureness included, from ever larger shops. */
export function lineUpTimes(counts: readonly number[]): readonly LineUpTime[] {
  return counts.map((count) => {
    const stock = stockOf(count);
    const middle = (times: number, whatIf: boolean) =>
      quantile(
        Array.from({ length: times }, () => timed(() => lineOf(visit, knowledge, stock, SEED, whatIf))),
        0.5,
      );
    const times = count > 20_000 ? 1 : count > 5_000 ? 3 : 9;
    // The first run warms up.
    lineOf(visit, knowledge, stock, SEED, false);
    return {
      shoes: count,
      boxes: stock.boxes.length,
      plain: middle(times, false),
      ...(count > 5_000 ? {} : { withWhatIf: middle(3, true) }),
    };
  });
}

/** Milliseconds to check the flow and count its routes and answer paths. */
export const flowCheckTime = (): number => {
  const files = contentFiles('flows/fitting');
  return quantile(
    Array.from({ length: 3 }, () => timed(() => checkFlow(files))),
    0.5,
  );
};
