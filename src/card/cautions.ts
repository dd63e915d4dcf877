import { CAUTION_LEVELS, type Knowledge, type Outcome } from '../flow/knowledge.ts';
import type { Caution } from '../profile/profile.ts';
import type { CardCaution } from './card.ts';
import { onlyHealth } from './private.ts';

/** Levels that a `refer` card prints in full for everybody, so that it does not tell which sign was tapped. */
const STOPS: readonly string[] = ['now', 'today', 'before-choosing'];

/**
 * The cautions of one card, most urgent first, each once.
 *
 * Every card prints those that are for everybody; a `refer` card, which sells nothing, leaves out the care of shoes and
 * prints every stop there is. What follows from
 * this customer's health answers is added only where the card may tell it, and what is for the fitter alone only on
 * the fitter's copy.
 */
export function cardCautions(
  outcome: Outcome,
  own: readonly Caution[],
  knowledge: Knowledge,
  health: ReadonlySet<string>,
  tellsHealth: boolean,
  fitter: boolean,
): readonly CardCaution[] {
  const shared = knowledge.cautions.filter(
    (row) =>
      (row.always && !(outcome === 'refer' && row.level === 'upkeep')) ||
      (outcome === 'refer' && !tellsHealth && row.health && STOPS.includes(row.level)),
  );
  const told = own.filter((caution) => tellsHealth || !(caution.health || onlyHealth(caution.reasons, health)));
  const wanted = new Set([...told.map((caution) => caution.code), ...shared.map((row) => row.id)]);
  return CAUTION_LEVELS.flatMap((level) =>
    knowledge.cautions
      .filter((row) => row.level === level && wanted.has(row.id) && (fitter || !row.fitterOnly))
      .map((row) => ({
        code: row.id,
        level: row.level,
        ...(row.whom ? { whom: row.whom } : {}),
        ...(fitter ? { backing: { source: row.source, grade: row.grade } } : {}),
      })),
  );
}
