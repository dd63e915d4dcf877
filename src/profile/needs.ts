import type { AttributeKey } from '../attributes/attributes.ts';
import { attribute as rowOf } from '../attributes/table.ts';
import { type Combined, combine } from './combine.ts';
import type { Contribution } from './contributions.ts';
import { LIKED_ATTRIBUTES } from './liked-attributes.ts';
import type { Facts, Need } from './profile.ts';
import { byText, roundTo } from './told.ts';

/** What "matters most" multiplies importance by; without it a need stops at 2/3, so that there is room to rise. */
export const MATTERS_MOST = 1.5;

/** A need that matters less than this says nothing worth reading. */
const LEAST_IMPORTANCE = 0.01;

/** One property with everything asked of it, combined but not yet rounded. */
export interface Weighed {
  readonly attribute: AttributeKey;
  readonly combined: Combined;
}

/** Everything asked, gathered by property. */
export function weigh(contributions: readonly Contribution[], facts: Facts): readonly Weighed[] {
  const attributes = [...new Set(contributions.map((each) => each.attribute))];
  return attributes.flatMap((attribute) => {
    const own = contributions.filter((each) => each.attribute === attribute);
    const today = facts[`today-${attribute}`];
    const combined = combine(own, rowOf(attribute), typeof today === 'number' ? today : undefined);
    return combined ? [{ attribute, combined }] : [];
  });
}

/** Needs, the most important first; ranges rounded to hundredths of their unit and importance to thousandths. */
export function needsOf(weighed: readonly Weighed[], facts: Facts): readonly Need[] {
  return weighed
    .map(({ attribute, combined }) => needOf(attribute, combined, raisedBy(attribute, facts)))
    .filter((need) => need.importance >= LEAST_IMPORTANCE)
    .sort((a, b) => b.importance - a.importance || byText(a.attribute, b.attribute));
}

function needOf(attribute: AttributeKey, combined: Combined, raised: string | undefined): Need {
  const importance = (combined.strength / MATTERS_MOST) * (raised === undefined ? 1 : MATTERS_MOST);
  const weightiest = [...combined.parts].sort(
    (a, b) => b.weight - a.weight || byText(a.contribution.reason.rule, b.contribution.reason.rule),
  );
  return {
    attribute,
    ideal: rounded(combined.ideal),
    limits: rounded(combined.limits),
    importance: roundTo(importance, 3),
    ...towardOf(combined),
    ...(combined.parts.some(({ contribution: { ask } }) => ask.neverLess) ? { neverLess: true as const } : {}),
    ...(raised === undefined ? {} : { raisedBy: raised }),
    reasons: weightiest.map((part) => part.contribution.reason),
  };
}

/** Only where somebody wishes for a change, and nobody for the other way. */
function towardOf({ parts }: Combined): Pick<Need, 'toward'> {
  const shifts = parts.flatMap(({ contribution: { ask } }) => ask.shift ?? []).filter((shift) => shift !== 0);
  if (shifts.length === 0) return {};
  if (shifts.every((shift) => shift < 0)) return { toward: 'less' };
  return shifts.every((shift) => shift > 0) ? { toward: 'more' } : {};
}

const rounded = ([low, high]: readonly [number, number]): readonly [number, number] => [
  roundTo(low, 2),
  roundTo(high, 2),
];

/** `matters-most:cushion`, where the customer named the liking that this property answers to. */
function raisedBy(attribute: AttributeKey, facts: Facts): string | undefined {
  const named = facts['matters-most'];
  if (!Array.isArray(named)) return undefined;
  const liking = named.find((each) => LIKED_ATTRIBUTES.get(each)?.includes(attribute));
  return liking === undefined ? undefined : `matters-most:${liking}`;
}
