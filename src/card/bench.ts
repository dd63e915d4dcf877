import type { Knowledge } from '../flow/knowledge.ts';
import type { Line } from '../pipeline.ts';
import type { Bench, CardCaution } from './card.ts';

/** What a fitter's copy adds: every need with its reasons, musts, what was not asked, and the sources behind it all. */
export function benchOf(line: Line, knowledge: Knowledge, cautions: readonly CardCaution[]): Bench {
  const { profile, visit } = line;
  const named = new Set([
    ...profile.needs.flatMap((need) => need.reasons.map((reason) => reason.source)),
    ...profile.musts.flatMap((must) => must.reasons.map((reason) => reason.source)),
    ...cautions.flatMap((caution) => (caution.backing ? [caution.backing.source] : [])),
  ]);
  return {
    hold: profile.hold,
    needs: profile.needs.map(({ attribute, ideal, reasons }) => ({
      attribute,
      ideal,
      reasons: reasons.map(({ from, rule, source, grade }) => ({ from, rule, source, grade })),
    })),
    musts: profile.musts.map((must) => ({
      attribute: must.attribute,
      value: String(must.value),
      from: [...new Set(must.reasons.map((reason) => reason.from))],
    })),
    unknown: profile.unknown,
    sources: knowledge.sources
      .filter((source) => named.has(source.id))
      .map(({ id, authors, year, title, where, known }) => ({
        id,
        authors,
        ...(year === undefined ? {} : { year }),
        title,
        where,
        known,
      })),
    ...(visit.observation.note ? { note: visit.observation.note } : {}),
  };
}
