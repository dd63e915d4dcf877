import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { AttributeKey } from '../../src/attributes/attributes.ts';
import { attribute as rowOf } from '../../src/attributes/table.ts';
import type { Rule } from '../../src/flow/knowledge.ts';
import { askedBy } from '../../src/profile/asked-by.ts';
import { GRADE_CAPS, isWeak, WEAK_VOICE } from '../../src/profile/grade-caps.ts';
import type { Need } from '../../src/profile/profile.ts';
import { rule } from '../profile/toy-knowledge.ts';
import { anyIdealRules, anyRules, anyShift, anyWishRules } from './any-rules.ts';

type Today = Readonly<Record<string, number>>;
const origins = new Map([['activity', 'activity']]);
const needsBy = (rules: readonly Rule[], today: Today = {}) =>
  askedBy({ activity: 'tennis', ...today }, origins, { rules, cautions: [] }).needs;
const needBy = (rules: readonly Rule[], attribute: AttributeKey, today: Today = {}): Need | undefined =>
  needsBy(rules, today).find((need) => need.attribute === attribute);

const anyKnowledge = anyRules({ ideals: anyIdealRules, wishes: anyWishRules });
const anyToday = fc.record(
  {
    'today-cushion': fc.integer({ min: 1, max: 5 }),
    'today-drop': fc.integer({ min: 0, max: 14 }),
    'today-mass': fc.integer({ min: 180, max: 500 }),
  },
  { requiredKeys: [] },
) as fc.Arbitrary<Today>;
const RUNS = { numRuns: 400 };
/** Ranges are rounded to hundredths. */
const ROUNDING = 0.011;
const middle = (need: Need | undefined) => (need ? (need.ideal[0] + need.ideal[1]) / 2 : Number.NaN);

describe('combining what rules ask', () => {
  it('does not depend on the order of the rules', () => {
    fc.assert(
      fc.property(
        anyKnowledge.chain((rules) =>
          fc.tuple(fc.constant(rules), fc.shuffledSubarray([...rules], { minLength: rules.length })),
        ),
        anyToday,
        ([rules, shuffled], today) => {
          expect(JSON.stringify(needsBy(shuffled, today))).toBe(JSON.stringify(needsBy(rules, today)));
        },
      ),
      RUNS,
    );
  });

  it('does not change when a statement is repeated on its topic', () => {
    fc.assert(
      fc.property(anyKnowledge, fc.nat(), anyToday, (rules, pick, today) => {
        const said = rules[pick % Math.max(1, rules.length)];
        if (!said) return;
        const again = { ...said, id: `zz-${said.id}` };
        expect(needsBy([...rules, again], today)).toEqual(needsBy(rules, today));
        expect(needsBy([...rules, said], today)).toEqual(needsBy(rules, today));
      }),
      RUNS,
    );
  });

  it('never moves away from a range that is asked for more strongly', () => {
    fc.assert(
      fc.property(anyIdealRules, fc.nat(), fc.integer({ min: 1, max: 60 }), (rules, pick, more) => {
        // Each rule speaks for a topic of its own: the law is about a wish growing, not about another being displaced.
        const apart = rules.map((each) => ({ ...each, topic: each.id }));
        const grown = apart[pick % Math.max(1, apart.length)];
        const ask = grown?.asks?.[0];
        if (!grown || !ask?.ideal) return;
        const stronger = { ...grown, asks: [{ ...ask, weight: Math.min(1, ask.weight + more / 100) }] };
        const before = needBy(apart, ask.attribute);
        const after = needBy(
          apart.map((each) => (each === grown ? stronger : each)),
          ask.attribute,
        );
        if (!before || !after) return;
        for (const end of [0, 1] as const) {
          expect(Math.abs(after.ideal[end] - ask.ideal[end])).toBeLessThanOrEqual(
            Math.abs(before.ideal[end] - ask.ideal[end]) + ROUNDING,
          );
        }
        expect(after.importance).toBeGreaterThanOrEqual(before.importance);
      }),
      RUNS,
    );
  });

  it('never moves away from a wish that is made, made more strongly, or made larger', () => {
    fc.assert(
      fc.property(
        anyKnowledge,
        anyShift,
        fc.integer({ min: 0, max: 60 }),
        fc.integer({ min: 0, max: 2 }),
        anyToday,
        (rules, ask, more, larger, today) => {
          const by = ask.shift ?? 0;
          if (by === 0) return;
          const liking = (asks: NonNullable<Rule['asks']>) => rule('my-wish', { basis: 'liking', asks });
          const wish = liking([ask]);
          const stronger = liking([{ ...ask, weight: Math.min(1, ask.weight + more / 100), shift: by * (1 + larger) }]);
          const none = needBy(rules, ask.attribute, today);
          const before = needBy([...rules, wish], ask.attribute, today);
          const after = needBy([...rules, stronger], ask.attribute, today);
          const towards = Math.sign(by);
          if (none) expect(towards * (middle(before) - middle(none))).toBeGreaterThanOrEqual(-ROUNDING);
          expect(towards * (middle(after) - middle(before))).toBeGreaterThanOrEqual(-ROUNDING);
          expect(after?.importance).toBeGreaterThanOrEqual(before?.importance ?? 0);
        },
      ),
      RUNS,
    );
  });

  it('stays within the scale, with limits around the ideal', () => {
    fc.assert(
      fc.property(anyKnowledge, anyToday, (rules, today) => {
        for (const { attribute, ideal, limits, importance } of needsBy(rules, today)) {
          const [low, high] = rowOf(attribute).range;
          expect([low <= ideal[0], ideal[0] <= ideal[1], ideal[1] <= high]).toEqual([true, true, true]);
          expect([limits[0] <= ideal[0], ideal[1] <= limits[1]]).toEqual([true, true]);
          expect(importance > 0 && importance <= 1).toBe(true);
        }
      }),
      RUNS,
    );
  });
});

describe('weak and contested rules', () => {
  it('together move a range no further than their one small voice against the rest', () => {
    fc.assert(
      fc.property(anyIdealRules, anyToday, (rules, today) => {
        const apart = rules.map((each) => ({ ...each, topic: each.id }));
        const firm = apart.filter((each) => !isWeak(each));
        for (const without of needsBy(firm, today)) {
          const { attribute } = without;
          const weak = apart
            .filter(isWeak)
            .flatMap((each) => each.asks?.filter((ask) => ask.attribute === attribute) ?? []);
          const rest = firm
            .flatMap((each) => (each.asks ?? []).map((ask) => ({ ask, cap: GRADE_CAPS[each.grade] })))
            .filter(({ ask }) => ask.attribute === attribute)
            .reduce((sum, { ask, cap }) => sum + ask.weight * cap, 0);
          const bound = WEAK_VOICE / (WEAK_VOICE + rest);
          const after = needBy(apart, attribute, today);
          for (const end of [0, 1] as const) {
            const furthest = Math.max(0, ...weak.map((ask) => Math.abs((ask.ideal?.[end] ?? 0) - without.ideal[end])));
            expect(Math.abs((after?.ideal[end] ?? 0) - without.ideal[end])).toBeLessThanOrEqual(
              bound * furthest + ROUNDING,
            );
          }
          // Importance stops at 2/3 unless it matters most, and a voice of 0.35 can close that much of the rest.
          expect((after?.importance ?? 0) - without.importance).toBeLessThanOrEqual((2 / 3) * WEAK_VOICE + 0.001);
        }
      }),
      RUNS,
    );
  });

  it('alone never matter more than their one small voice', () => {
    fc.assert(
      fc.property(anyKnowledge, anyToday, (rules, today) => {
        for (const need of needsBy(rules.filter(isWeak), today))
          expect(need.importance).toBeLessThanOrEqual((2 / 3) * WEAK_VOICE + 0.001);
      }),
      RUNS,
    );
  });

  it("are outweighed by the customer's own liking, however many they are", () => {
    fc.assert(
      fc.property(anyIdealRules, anyShift, anyToday, (rules, ask, today) => {
        const weak = rules.filter(isWeak).map((each) => ({ ...each, topic: each.id }));
        const rest = needBy(weak, ask.attribute, today);
        const shift = ask.shift ?? 0;
        if (!rest || shift === 0) return;
        const target = (today[`today-${ask.attribute}`] ?? middle(rest)) + shift;
        const away = Math.sign(shift) * (target - middle(rest));
        const [low, high] = rowOf(ask.attribute).range;
        // A target off the scale cannot be reached.
        if (away <= 0 || target < low || target > high) return;
        const wide = (rest.ideal[1] - rest.ideal[0]) / 2;
        if (target + wide > high || target - wide < low) return;
        const liked = needBy([...weak, rule('my-wish', { basis: 'liking', asks: [ask] })], ask.attribute, today);
        expect(Math.abs(middle(liked) - target)).toBeLessThanOrEqual(Math.abs(middle(liked) - middle(rest)) + ROUNDING);
      }),
      RUNS,
    );
  });
});
