import type { Knowledge } from '../flow/knowledge.ts';
import type { Line } from '../pipeline.ts';
import type { Need, Reason } from '../profile/profile.ts';
import { isSlight } from '../profile/slight.ts';
import { benchRecord, type Shelves } from './bench-record.ts';
import type { Bench, CardCaution } from './card.ts';

/** What a fitter's copy adds: the record of the bench, every need with its reasons, musts, what was not asked, and the sources behind it all. */
export function benchOf(
  line: Line,
  knowledge: Knowledge,
  cautions: readonly CardCaution[],
  shelves: Shelves,
  pairStands: boolean,
): Bench {
  const { profile, visit } = line;
  // Nothing is sold on a `refer` card, so what shoe would suit is left for after the clinician's word.
  const stopped = profile.outcome === 'refer';
  const needs = stopped ? [] : profile.needs.map((need) => ({ ...need, reasons: weighty(need, line, knowledge) }));
  const musts = stopped ? [] : profile.musts;
  const named = new Set([
    ...needs.flatMap((need) => need.reasons.map((reason) => reason.source)),
    ...musts.flatMap((must) => must.reasons.map((reason) => reason.source)),
    ...cautions.flatMap((caution) => (caution.backing ? [caution.backing.source] : [])),
  ]);
  return {
    ...benchRecord(visit, knowledge.flow, shelves, pairStands),
    hold: profile.hold,
    needs: needs.map(({ attribute, ideal, reasons }) => ({
      attribute,
      ideal,
      reasons: reasons.map(({ from, rule, source, grade }) => ({ from, rule, source, grade })),
    })),
    musts: musts.map((must) => ({
      attribute: must.attribute,
      value: must.value,
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

/** The reasons that carry a need. Where all are slight, all are said. */
function weighty({ attribute, reasons }: Need, { profile }: Line, knowledge: Knowledge): readonly Reason[] {
  const carry = reasons.filter((reason) => !isSlight(reason, attribute, profile.facts, knowledge));
  return carry.length > 0 ? carry : reasons;
}
