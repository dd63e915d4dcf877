import fc from 'fast-check';
import { attribute as rowOf } from '../../src/attributes/table.ts';
import { type Ask, GRADES, type Rule } from '../../src/flow/knowledge.ts';
import { rule } from '../profile/toy-knowledge.ts';

/** Few properties, so that rules meet. */
const ATTRIBUTES = ['cushion', 'drop', 'mass'] as const;

/** Few weights and grades, so that rules tie. */
const anyWeight = fc.integer({ min: 1, max: 8 }).map((eighths) => eighths / 8);

const anyIdeal: fc.Arbitrary<Ask> = fc.constantFrom(...ATTRIBUTES).chain((attribute) => {
  const [low, high] = rowOf(attribute).range;
  const within = fc.integer({ min: 0, max: 40 }).map((part) => low + ((high - low) * part) / 40);
  return fc.record({ ends: fc.tuple(within, within), weight: anyWeight }).map(({ ends: [a, b], weight }) => ({
    attribute,
    ideal: [Math.min(a, b), Math.max(a, b)] as const,
    weight,
  }));
});

export const anyShift: fc.Arbitrary<Ask> = fc
  .constantFrom(...ATTRIBUTES)
  .chain((attribute) =>
    fc
      .record({ steps: fc.integer({ min: -3, max: 3 }), weight: anyWeight })
      .map(({ steps, weight }) => ({ attribute, shift: steps * rowOf(attribute).step, weight })),
  );

const anyGrade = fc.constantFrom(...GRADES);
const anyTopic = fc.constantFrom('one', 'two', 'three');

/** Rules of any grade that ask for ranges, and wishes; all of them fire where an activity was named. */
export function anyRules(kind: {
  readonly ideals: fc.Arbitrary<readonly Rule[]>;
  readonly wishes: fc.Arbitrary<readonly Rule[]>;
}) {
  return fc.tuple(kind.ideals, kind.wishes).map(([ideals, wishes]) => [...ideals, ...wishes]);
}

export const anyIdealRules = fc
  .array(fc.record({ topic: anyTopic, grade: anyGrade, ask: anyIdeal }), { maxLength: 7 })
  .map((rows) => rows.map(({ topic, grade, ask }, i): Rule => rule(`ideal-${i}`, { topic, grade, asks: [ask] })));

/** Wishes of the customer's own and moves that evidence asks for, each with a topic of its own. */
export const anyWishRules = fc
  .array(fc.record({ liking: fc.boolean(), grade: anyGrade, ask: anyShift }), { maxLength: 4 })
  .map((rows) =>
    rows.map(
      ({ liking, grade, ask }, i): Rule => rule(`wish-${i}`, { grade, basis: liking ? 'liking' : 'body', asks: [ask] }),
    ),
  );
