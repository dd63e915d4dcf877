import type { CautionRow } from '../flow/knowledge.ts';
import { HOLDS, type Hold } from '../visit/visit.ts';
import type { Fired } from './fire.ts';
import type { Facts } from './profile.ts';
import { isStop, type Stop } from './stops.ts';

/** Every stop that the fired rules name. A rule that refers without a caution stops the choosing. */
export function stopsOf(fired: readonly Fired[], cautions: readonly CautionRow[]): readonly Stop[] {
  return fired.flatMap(({ rule }) => {
    const levels = cautions.filter((row) => rule.cautions?.includes(row.id)).map((row) => row.level);
    const stops = levels.filter(isStop);
    return rule.outcome === 'refer' && stops.length === 0 ? ['before-choosing' as const] : stops;
  });
}

/**
 * The one word that travels: the most careful of what the rules name, of what the visit carried, of the old pair having
 * to be measured first, and of health not having been asked about. A clinician's clearance lifts `before-choosing` and
 * nothing else.
 *
 * @example
 * holdOf(['before-choosing'], { cleared: true, 'health-asked': 'asked' }) // 'none'
 */
export function holdOf(stops: readonly Stop[], facts: Facts, measureFirst = false): Hold {
  const carried = HOLDS.find((hold) => hold === facts['hold-carried']);
  const asked = facts['health-asked'];
  const unasked = asked === 'skipped' || (asked !== 'asked' && carried === undefined);
  const words: readonly Hold[] = [
    ...stops,
    ...(carried ? [carried] : []),
    measureFirst ? 'measure-first' : 'none',
    unasked ? 'skipped' : 'none',
  ];
  const standing = facts['cleared'] === true ? words.filter((word) => word !== 'before-choosing') : words;
  return standing.reduce(moreCareful, 'none');
}

const moreCareful = (a: Hold, b: Hold): Hold => (HOLDS.indexOf(a) >= HOLDS.indexOf(b) ? a : b);
