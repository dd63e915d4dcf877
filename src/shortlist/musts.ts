import type { ListKey, MarkKey } from '../attributes/attributes.ts';
import { LIST_ATTRIBUTES, MARK_ATTRIBUTES } from '../attributes/attributes.ts';
import type { Must } from '../profile/profile.ts';
import type { Shoe } from '../stock/shoe.ts';

/** `unrecorded` shuts a pair out as `no` does: a mark nobody wrote down is not a yes. It is counted apart, to be said. */
export type Met = 'yes' | 'no' | 'unrecorded';

type Test = (shoe: Shoe, value: Must['value']) => Met;

const told = (yes: boolean): Met => (yes ? 'yes' : 'no');

const marks = MARK_ATTRIBUTES.map((key: MarkKey): [string, Test] => [
  key,
  (shoe, value) => {
    const mark = shoe.marks[key];
    return mark === undefined ? 'unrecorded' : told(mark === value);
  },
]);

/** The list holds it: a slip mark among the safety marks, a strap among the closures. */
const holds = LIST_ATTRIBUTES.map((key: ListKey): [string, Test] => [
  key,
  (shoe, value) => {
    const list = shoe.lists[key];
    return list === undefined ? 'unrecorded' : told(list.includes(String(value)));
  },
]);

const without = (key: ListKey): Test => {
  return (shoe, value) => {
    const list = shoe.lists[key];
    return list === undefined ? 'unrecorded' : told(!list.includes(String(value)));
  };
};

const TESTS: ReadonlyMap<string, Test> = new Map<string, Test>([
  ...marks,
  ...holds,
  // "All black" is a rule about the whole shoe, so one other colour is one too many.
  [
    'colour',
    ({ lists: { colour } }, value) =>
      colour === undefined || colour.length === 0 ? 'unrecorded' : told(colour.every((each) => each === value)),
  ],
  ['colour-not', without('colour')],
  ['closure-not', without('closure')],
  ['material-not', without('materials')],
  // A cap is on the thickest place, which is the heel unless the forefoot is known to be thicker still.
  [
    'stack-cap',
    ({ numbers }, value) => {
      const heel = numbers['heel-stack'];
      if (heel === undefined) return 'unrecorded';
      return told(Math.max(heel, numbers['forefoot-stack'] ?? heel) <= Number(value));
    },
  ],
  ['price-max', ({ numbers: { price } }, value) => (price === undefined ? 'unrecorded' : told(price <= Number(value)))],
  ['shelf', ({ shelf }, value) => told(value === 'any' || shelf === 'any' || shelf === value)],
]);

/** Every attribute that a must may name. `size` is always asked for, by the stock, and never written as a rule. */
export const MUST_ATTRIBUTES: readonly string[] = [...TESTS.keys()];

/**
 * Whether a shoe meets one must. A must the product does not know is a fault in the rules, which `check` refuses
 * beforehand, so it throws here.
 *
 * @example
 * meets(hallShoe, { attribute: 'non-marking', value: true, reasons: [] }) // 'yes'
 */
export function meets(shoe: Shoe, must: Must): Met {
  const test = TESTS.get(must.attribute);
  if (test === undefined) throw new Error(`No test for the must ${must.attribute}`);
  return test(shoe, must.value);
}
