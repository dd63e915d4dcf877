import type { AttributeKey } from '../attributes/attributes.ts';
import type { Must, Need, Preference, Reason } from '../profile/profile.ts';
import type { Shoe } from '../stock/shoe.ts';
import { floored } from './desirability.ts';
import { meets } from './musts.ts';
import { preferred } from './preferred.ts';
import type { LineUp } from './shortlist.ts';
import { substitute } from './substitute.ts';

/** A line-up with what it was made from. */
export interface Made {
  readonly lineUp: LineUp;
  readonly needs: readonly Need[];
  readonly musts: readonly Must[];
  readonly preferences?: readonly Preference[];
}

/** One pair that moved between two line-ups, and why. Words: `moved.<what>`. */
export interface Moved {
  readonly shoe: Shoe;
  readonly what: 'came-in' | 'went-out' | 'up' | 'down';
  /** The need or preference that moved it most, or the must that let it in or shut it out. */
  readonly by?: AttributeKey | string;
  /** The answers behind it; empty when stock, size or the other pairs are. */
  readonly from: readonly string[];
}

/**
 * What moved between the line-up before a change and the one after it, each with its cause: the must that newly shuts
 * it out or lets it in, else the need or preference that changed most in its favour or against it.
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
  const weigh = (by: string, change: (of: Shoe) => number, from: () => readonly string[]): void => {
    const usual = all.reduce((sum, other) => sum + change(other), 0) / all.length;
    const gain = sign * (change(shoe) - usual);
    if (gain <= most + 1e-9) return;
    most = gain;
    cause = { by, from: from() };
  };
  for (const key of new Set([...before.needs, ...after.needs].map(({ attribute }) => attribute))) {
    weigh(
      key,
      (of) => worth(of, key, after.needs) - worth(of, key, before.needs),
      () => raised(key, before, after) ?? changed(reasonsOf(before.needs, key), reasonsOf(after.needs, key)),
    );
  }
  const was = before.preferences ?? [];
  const is = after.preferences ?? [];
  for (const code of new Set([...was, ...is].map((each) => each.code))) {
    const reasons = (of: readonly Preference[]) => of.find((each) => each.code === code)?.reasons ?? [];
    weigh(
      code,
      (of) => worthPreferred(of, code, is) - worthPreferred(of, code, was),
      () => changed(reasons(was), reasons(is)),
    );
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

function worthPreferred(shoe: Shoe, code: string, preferences: readonly Preference[]): number {
  const preference = preferences.find((each) => each.code === code);
  return preference === undefined ? 0 : preference.importance * Math.log(preferred(shoe, preference));
}

/** That a need newly matters most, or no longer does, where that is what changed about it. */
function raised(key: AttributeKey, before: Made, after: Made): readonly string[] | undefined {
  const by = ({ needs }: Made) => needs.find(({ attribute }) => attribute === key)?.raisedBy;
  const said = by(after) ?? by(before);
  return said !== undefined && by(before) !== by(after) ? [said] : undefined;
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
