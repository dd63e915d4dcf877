import type { Part } from './combine.ts';
import { gapBetween } from './gap-between.ts';
import type { Weighed } from './needs.ts';
import type { Conflict } from './profile.ts';
import { byText } from './told.ts';

/** From this weight on a need counts as strong. A design choice of this project. */
export const STRONG_WEIGHT = 0.5;

/**
 * Two strong needs on one property whose ranges do not touch: both weigh 0.5 or more, and there is a gap between what
 * they ask. For each property the pair that is furthest apart, told in the order of the properties.
 */
export function conflictsOf(weighed: readonly Weighed[]): readonly Conflict[] {
  return weighed
    .flatMap(({ attribute, combined }): Conflict[] => {
      const strong = combined.parts.filter((part) => part.weight >= STRONG_WEIGHT);
      const widest = furthestApart(strong);
      return widest ? [{ attribute, between: [widest[0].contribution.reason, widest[1].contribution.reason] }] : [];
    })
    .sort((a, b) => byText(a.attribute, b.attribute));
}

function furthestApart(parts: readonly Part[]): readonly [Part, Part] | undefined {
  const sorted = [...parts].sort((a, b) => byText(a.contribution.reason.rule, b.contribution.reason.rule));
  const pairs = sorted.flatMap((a, i) =>
    sorted.slice(i + 1).map((b) => ({ pair: [a, b] as const, gap: gapBetween(a.range, b.range) })),
  );
  const widest = pairs.reduce<(typeof pairs)[number] | undefined>(
    (best, each) => (each.gap > (best?.gap ?? 0) ? each : best),
    undefined,
  );
  return widest?.pair;
}
