import type { AttributeKey } from '../attributes/attributes.ts';
import type { Must, Need, Reason } from '../profile/profile.ts';
import type { Shoe } from '../stock/shoe.ts';
import { floored } from './desirability.ts';
import { meets } from './musts.ts';
import type { LineUp } from './shortlist.ts';
import { substitute } from './substitute.ts';

/** A line-up with what it was made from. */
export interface Made {
  readonly lineUp: LineUp;
  readonly needs: readonly Need[];
  readonly musts: readonly Must[];
}

/** One pair that moved between two line-ups, and why. Words: `moved.<what>`. */
export interface Moved {
  readonly shoe: Shoe;
  readonly what: 'came-in' | 'went-out' | 'up' | 'down';
  /** The need that moved it most, or the must that let it in or shut it out. */
  readonly by?: AttributeKey | string;
  /** The answers behind it; empty when stock, size or the other pairs are. */
  readonly from: readonly string[];
}

/**
 * What moved between the line-up before a change and the one after it, each with its cause: the must that newly shuts
 * it out or lets it in, else the need that changed most in its favour or against it.
 */
export function compareLineUps(before: Made, after: Made): readonly Moved[] {
  const places = ({ lineUp }: Made) => new Map(lineUp.entries.map(({ shoe, place }) => [shoe.id, { shoe, place }]));
  const was = places(before);
  const is = places(after);
  const all = [...new Map([...was, ...is]).values()].map(({ shoe }) => shoe);
  const moved = all.flatMap((shoe): { shoe: Shoe; what: Moved['what'] }[] => {
    const then = was.get(shoe.id)?.place;
    const now = is.get(shoe.id)?.place;
    if (then === now) return [];
    if (then === undefined) return [{ shoe, what: 'came-in' }];
    if (now === undefined) return [{ shoe, what: 'went-out' }];
    return [{ shoe, what: now < then ? 'up' : 'down' }];
  });
  return moved.map(({ shoe, what }) => ({ shoe, what, ...why(shoe, what, before, after, all) }));
}

function why(
  shoe: Shoe,
  what: Moved['what'],
  before: Made,
  after: Made,
  all: readonly Shoe[],
): Pick<Moved, 'by' | 'from'> {
  const shut = (musts: readonly Must[]) => musts.find((must) => meets(shoe, must) !== 'yes');
  const must = what === 'went-out' ? shut(after.musts) : what === 'came-in' ? shut(before.musts) : undefined;
  if (must !== undefined) return { by: must.attribute, from: fromOf(must.reasons) };

  const sign = what === 'came-in' || what === 'up' ? 1 : -1;
  let most = 0;
  let cause: Pick<Moved, 'by' | 'from'> = { from: [] };
  for (const key of new Set([...before.needs, ...after.needs].map(({ attribute }) => attribute))) {
    const change = (of: Shoe) => worth(of, key, after.needs) - worth(of, key, before.needs);
    const usual = all.reduce((sum, other) => sum + change(other), 0) / all.length;
    const gain = sign * (change(shoe) - usual);
    if (gain <= most + 1e-9) continue;
    most = gain;
    cause = { by: key, from: changed(reasonsOf(before.needs, key), reasonsOf(after.needs, key)) };
  }
  return cause;
}

/**
 * What one need adds to the sum that the order rests on. Not as a share of all importances: a share shrinks when
 * another need comes in, and the wrong need would be blamed.
 */
function worth(shoe: Shoe, key: AttributeKey, needs: readonly Need[]): number {
  const need = needs.find(({ attribute }) => attribute === key);
  if (need === undefined) return 0;
  const value = shoe.numbers[key];
  const part = value === undefined ? substitute(need) : floored(value, need);
  return need.importance * Math.log(part);
}

const reasonsOf = (needs: readonly Need[], key: AttributeKey): readonly Reason[] =>
  needs.find(({ attribute }) => attribute === key)?.reasons ?? [];

const fromOf = (reasons: readonly Reason[]): readonly string[] => [...new Set(reasons.map(({ from }) => from))];

/** The answers whose reasons are new, else those whose reasons are gone, else all that still stand. */
function changed(before: readonly Reason[], after: readonly Reason[]): readonly string[] {
  const beyond = (these: readonly Reason[], those: readonly Reason[]) =>
    these.filter((a) => !those.some((b) => a.from === b.from && a.rule === b.rule));
  const added = beyond(after, before);
  const gone = beyond(before, after);
  return fromOf(added.length > 0 ? added : gone.length > 0 ? gone : after);
}
